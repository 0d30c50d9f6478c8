import { BALL_COLOURS, BALL_INK, PALETTE_KEYS, type Palette } from "../../view/palette.ts";
import { readSetting, writeSetting } from "./settings.ts";

export const THEMES = ["auto", "light", "dark"] as const;
export type ThemeChoice = (typeof THEMES)[number];

const DARK = "(prefers-color-scheme: dark)";
/** The system chooses all colours. */
const FORCED = "(forced-colors: active)";

/** Light or dark, as the system says or as chosen; the colours themselves live in styles/tokens.css. */
export class Theme {
  choice = $state<ThemeChoice>(asTheme(readSetting("theme")));
  #systemIsDark = $state(false);
  readonly isDark = $derived(this.choice === "auto" ? this.#systemIsDark : this.choice === "dark");

  /** Counts the changes of contrast: the drawing's colours are then read anew. */
  contrasts = $state(0);

  /** Follows the system's settings; returns what stops it. */
  follow(): () => void {
    document.documentElement.dataset.theme = this.choice;
    const dark = matchMedia(DARK);
    const read = () => {
      this.#systemIsDark = dark.matches;
    };
    read();
    const count = () => {
      this.contrasts += 1;
    };
    const watched = [
      [dark, read],
      [matchMedia("(prefers-contrast: more)"), count],
      [matchMedia(FORCED), count],
    ] as const;
    for (const [query, act] of watched) query.addEventListener("change", act);
    return () => {
      for (const [query, act] of watched) query.removeEventListener("change", act);
    };
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
  const { dataset } = document.documentElement;
  const before = dataset.theme;
  // The page's own theme decides what the properties hold, also where others are asked for: a clip, a printer.
  const isShown = before === "auto" && matchMedia(DARK).matches === isDark;
  if (!isShown) dataset.theme = isDark ? "dark" : "light";
  const probe = document.createElement("span");
  probe.hidden = true;
  // Or every colour would read as that of text where the system chooses the colours.
  probe.style.setProperty("forced-color-adjust", "none");
  host.append(probe);
  const colours = PALETTE_KEYS.map((key) => {
    probe.style.setProperty(
      "color",
      `var(--view-${key.replace(/[A-Z]/g, (big) => `-${big.toLowerCase()}`)})`,
    );
    return [key, getComputedStyle(probe).color] as const;
  });
  probe.remove();
  if (before !== undefined) dataset.theme = before;
  const drawn = Object.fromEntries(colours) as Omit<Palette, "balls" | "ballInk">;
  // Few colours are left then: balls are told apart by their numbers, as they are for many people anyway.
  if (matchMedia(FORCED).matches) return { ...drawn, ballInk: drawn.floor, balls: [drawn.doorway] };
  return { ...drawn, ballInk: BALL_INK, balls: BALL_COLOURS };
}
