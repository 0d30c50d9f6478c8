import { BALL_COLOURS, PALETTE_KEYS, type Palette } from "../../view/palette.ts";
import { readSetting, writeSetting } from "./settings.ts";

export const THEMES = ["auto", "light", "dark"] as const;
export type ThemeChoice = (typeof THEMES)[number];

/** Light or dark, as the system says or as chosen; the colours themselves live in styles/tokens.css. */
export class Theme {
  choice = $state<ThemeChoice>(asTheme(readSetting("theme")));
  #systemIsDark = $state(false);
  readonly isDark = $derived(this.choice === "auto" ? this.#systemIsDark : this.choice === "dark");

  /** Follows the system's setting; returns what stops it. */
  follow(): () => void {
    document.documentElement.dataset.theme = this.choice;
    const query = matchMedia("(prefers-color-scheme: dark)");
    const read = () => {
      this.#systemIsDark = query.matches;
    };
    read();
    query.addEventListener("change", read);
    return () => query.removeEventListener("change", read);
  }

  choose(choice: ThemeChoice): void {
    this.choice = choice;
    // At once, not in an effect: the drawing reads its colours as soon as the choice changes.
    document.documentElement.dataset.theme = choice;
    writeSetting("theme", choice);
  }
}

function asTheme(text: string | null): ThemeChoice {
  return THEMES.find((theme) => theme === text) ?? "auto";
}

/** The drawing's colours in the light or the dark theme, read from the custom properties `--view-…` as they hold at `host`. */
export function readPalette(host: HTMLElement, isDark: boolean): Palette {
  const probe = document.createElement("span");
  probe.hidden = true;
  probe.style.setProperty("color-scheme", isDark ? "dark" : "light");
  host.append(probe);
  const colours = PALETTE_KEYS.map((key) => {
    probe.style.setProperty(
      "color",
      `var(--view-${key.replace(/[A-Z]/g, (big) => `-${big.toLowerCase()}`)})`,
    );
    return [key, getComputedStyle(probe).color] as const;
  });
  probe.remove();
  return { ...(Object.fromEntries(colours) as Omit<Palette, "balls">), balls: BALL_COLOURS };
}
