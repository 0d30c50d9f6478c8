import { moveTexts } from "../../texts/english/move.ts";
import { stepWordsTexts as t } from "../../texts/english/stepWords.ts";
import type { Call } from "./calls.ts";
import { EXACT, type Places, readNumber } from "./numberText.ts";

type Value = Call["args"][number] | undefined;

const num = (value: Value): number => (typeof value === "number" ? value : 0);
const isNegative = (value: Value): boolean => num(value) < 0;
const wedge = (value: Value): string =>
  typeof value === "string" ? t.wedgeIn(moveTexts.corners[value]) : t.wedgeUnknown;

/**
 * A call as a neutral sentence: "drive forward 36 mm at 200 mm/s".
 * @param places left out, it is as exact as the listings
 */
export function stepWords({ name, args }: Call, places: Places = EXACT): string {
  const mm = (value: Value): string => readNumber(Math.abs(num(value)), places.mm);
  const deg = (value: Value): string => readNumber(Math.abs(num(value)), places.deg);
  const speed = (value: Value): string => readNumber(num(value), places.speed);
  const seconds = (value: Value): string => readNumber(num(value), places.seconds);
  const [a, b, c, d, e] = args;
  switch (name) {
    case "drive":
      return t.drive(isNegative(a), mm(a), speed(b));
    case "drive_beside":
      return t.beside(t.drive(isNegative(a), mm(a), speed(b)), String(c), mm(d));
    case "turn":
      return t.turn(isNegative(a), deg(a), speed(b));
    case "curve":
      return t.curve(isNegative(b), deg(b), mm(a), isNegative(a), speed(c));
    case "drive_to_wall":
      return t.toWall(isNegative(a), mm(a), mm(b), speed(c));
    case "drive_to_wall_beside":
      return t.beside(t.toWall(isNegative(a), mm(a), mm(b), speed(c)), String(d), mm(e));
    case "wait":
      return t.wait(seconds(a));
    case "open_arms":
      return t.openArms(seconds(a));
    case "close_arms":
      return t.closeArms(seconds(a));
    case "scan":
      return t.scan(isNegative(a), deg(a), speed(b), wedge(c));
    case "fetch":
      return t.fetch(speed(a), wedge(b));
    case "go_to":
      return t.goTo(mm(a), mm(b), readNumber(num(c), places.deg), speed(d), wedge(e));
    default:
      return name satisfies never;
  }
}
