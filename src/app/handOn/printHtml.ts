import { handOnTexts } from "../../texts/english/handOn.ts";

/** Prints a self-contained page without leaving this one: in a frame of its own, which is gone afterwards. */
export function printHtml(html: string): void {
  const frame = document.createElement("iframe");
  frame.title = handOnTexts.printed;
  frame.style.cssText = "position: fixed; width: 0; height: 0; border: 0; visibility: hidden";
  frame.srcdoc = html;
  frame.addEventListener("load", () => {
    const inner = frame.contentWindow;
    if (!inner) return;
    inner.addEventListener("afterprint", () => frame.remove());
    inner.print();
  });
  document.body.append(frame);
}
