import { Text, TextStyle } from "pixi.js";

export const LABEL_FONT = ["system-ui", "Segoe UI", "Roboto", "Helvetica Neue", "Arial", "sans-serif"];

export interface LabelStyle {
  readonly colour: string;
  readonly sizePx: number;
  readonly bold?: boolean;
  /** Colour of a rim that keeps the text readable on lines and hatching. */
  readonly halo?: string;
}

/** Pixi takes labels for the same picture only when they share one style object. */
const styles = new Map<string, TextStyle>();
/** Colours and sizes in use at a time are far fewer: more come only from resizing the window again and again. */
const MOST_STYLES = 64;

/** A piece of text whose middle sits where it is put. */
export function label(text: string, style: LabelStyle): Text {
  const node = new Text({ text, style: textStyle(style) });
  node.anchor.set(0.5);
  return node;
}

function textStyle({ colour, sizePx, bold = false, halo }: LabelStyle): TextStyle {
  const key = `${colour} ${sizePx} ${bold} ${halo}`;
  const known = styles.get(key);
  if (known) return known;
  if (styles.size >= MOST_STYLES) styles.clear();
  const style = new TextStyle({
    fontFamily: LABEL_FONT,
    fontSize: sizePx,
    fontWeight: bold ? "600" : "400",
    fill: colour,
    align: "center",
    padding: 4,
    lineHeight: sizePx * 1.25,
    ...(halo ? { stroke: { color: halo, width: 4, join: "round" as const } } : {}),
  });
  styles.set(key, style);
  return style;
}
