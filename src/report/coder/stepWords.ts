import { moveTexts } from "../../texts/english/move.ts";
import type { Call } from "./calls.ts";
import { DEG_DECIMALS, MM_DECIMALS, numberText, SECONDS_DECIMALS, SPEED_DECIMALS } from "./numberText.ts";

type Value = Call["args"][number] | undefined;

const num = (value: Value): number => (typeof value === "number" ? value : 0);
const mm = (value: Value): string => `${numberText(Math.abs(num(value)), MM_DECIMALS)} mm`;
const deg = (value: Value): string => `${numberText(Math.abs(num(value)), DEG_DECIMALS)} deg`;
const speed = (value: Value): string => numberText(num(value), SPEED_DECIMALS);
const seconds = (value: Value): string => `${numberText(num(value), SECONDS_DECIMALS)} s`;
const way = (value: Value): string => (num(value) < 0 ? "backward" : "forward");
const side = (value: Value): string => (num(value) < 0 ? "right" : "left");
const corner = (value: Value): string =>
  typeof value === "string" ? `wedge ${moveTexts.corners[value]}` : "wedge unknown";

/** A call as a neutral sentence, as exact as the listings: "drive forward 36 mm at 200 mm/s". */
export function stepWords({ name, args }: Call): string {
  const [a, b, c, d, e] = args;
  switch (name) {
    case "drive":
      return `drive ${way(a)} ${mm(a)} at ${speed(b)} mm/s`;
    case "turn":
      return `turn ${side(a)} ${deg(a)} at ${speed(b)} deg/s`;
    case "curve":
      return `curve ${side(b)} ${deg(b)} over ${mm(a)} ${way(a)} at ${speed(c)} mm/s`;
    case "drive_to_wall":
      return `drive ${way(a)} to the wall ${mm(a)} and push on ${mm(b)} at ${speed(c)} mm/s`;
    case "wait":
      return `wait ${seconds(a)}`;
    case "open_arms":
      return `open the arms ${seconds(a)}`;
    case "close_arms":
      return `close the arms ${seconds(a)}`;
    case "scan":
      return `look around: turn ${side(a)} ${deg(a)} at ${speed(b)} deg/s and note every ball (${corner(c)})`;
    case "fetch":
      return `fetch the noted ball that takes least time, at ${speed(a)} mm/s (${corner(b)})`;
    case "go_to": {
      const facing = numberText(num(c), DEG_DECIMALS);
      return `go to x ${mm(a)}, y ${mm(b)}, facing ${facing} deg, at ${speed(d)} mm/s (${corner(e)})`;
    }
    default:
      return name satisfies never;
  }
}
