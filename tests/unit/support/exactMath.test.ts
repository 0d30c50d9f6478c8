import { expect, test } from "vitest";
import {
  decimal,
  errorUlp,
  exactAcos,
  exactAsin,
  exactAtan2,
  exactCos,
  exactExp,
  exactLog,
  exactSin,
  exactWrap,
} from "../../support/exactMath.ts";

// The measure itself, against the decimals of these constants in Sloane's encyclopedia of integer sequences (from memory, and
// recomputed with an arbitrary-precision package): A049469, A049470, A001113, A068985, A002162, A073000, A000796, A003881.
test.each([
  ["sin 1", exactSin(1), "0.8414709848078965066525023216302989996225"],
  ["cos 1", exactCos(1), "0.5403023058681397174009366074429766037323"],
  ["e", exactExp(1), "2.7182818284590452353602874713526624977572"],
  ["1/e", exactExp(-1), "0.3678794411714423215955237701614608674458"],
  ["ln 2", exactLog(2), "0.6931471805599453094172321214581765680755"],
  ["atan 1/2", exactAtan2(1, 2), "0.4636476090008061162142562314612144020285"],
  ["π/4", exactAtan2(3, 3), "0.7853981633974483096156608458198757210492"],
  ["−3π/4", exactAtan2(-1, -1), "-2.3561944901923449288469825374596271631478"],
  ["asin 1/2 = π/6", exactAsin(0.5), "0.5235987755982988730771072305465838140328"],
  ["acos −1/2 = 2π/3", exactAcos(-0.5), "2.0943951023931954923084289221863352561314"],
  ["6 − 2π", exactWrap(6), "-0.2831853071795864769252867665590057683943"],
])("%s", (_, exact, digits) => {
  expect(decimal(exact, 40)).toBe(digits);
});

test("an error is counted in units of the last place", () => {
  const ulp = 2 ** -53;
  expect(errorUlp(Math.LN2, exactLog(2))).toBeLessThan(0.5);
  expect(errorUlp(Math.LN2 + ulp, exactLog(2))).toBeGreaterThan(0.5);
  expect(errorUlp(Math.LN2 + 9 * ulp, exactLog(2))).toBeCloseTo(9, 0);
});
