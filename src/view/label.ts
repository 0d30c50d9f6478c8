import { Text } from "pixi.js";

export const LABEL_FONT = ["system-ui", "Segoe UI", "Roboto", "Helvetica Neue", "Arial", "sans-serif"];

export interface LabelStyle {
  readonly colour: string;
  readonly sizePx: number;
  readonly bold?: boolean;
  /** Colour of a rim that keeps the text readable on lines and hatching. */
  readonly halo?: string;
}

/** A piece of text whose middle sits where it is put. */
export function label(text: string, style: LabelStyle): Text {
  const node = new Text({
    text,
    style: {
      fontFamily: LABEL_FONT,
      fontSize: style.sizePx,
      fontWeight: style.bold ? "600" : "400",
      fill: style.colour,
      align: "center",
      padding: 4,
      lineHeight: style.sizePx * 1.25,
      ...(style.halo ? { stroke: { color: style.halo, width: 4, join: "round" as const } } : {}),
    },
  });
  node.anchor.set(0.5);
  return node;
}
