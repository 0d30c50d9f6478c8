import { exp, log } from "./elementary.ts";

/**
 * Quantile of the standard normal distribution, relative error about 1e−15 for p in [1e−300, 1 − 1e−16].
 *
 * @param p probability; 0 and 1 give ∓Infinity, outside [0, 1] NaN
 * Source: Wichura, Algorithm AS 241 (PPND16), Applied Statistics 37 (1988) 477–484. Checked in tests/published/normal.
 */
export function normalQuantile(p: number): number {
  const q = p - 0.5;
  if (q <= 0.425 && q >= -0.425) return q * centralRatio(0.180625 - q * q);
  const tail = q < 0 ? p : 1 - p;
  if (!(tail > 0)) return tail === 0 ? (q < 0 ? -Infinity : Infinity) : NaN;
  const r = Math.sqrt(-log(tail));
  const size = r <= 5 ? middleRatio(r - 1.6) : farRatio(r - 5);
  return q < 0 ? -size : size;
}

function centralRatio(r: number): number {
  const above =
    ((((((2509.0809287301227 * r + 33430.57558358813) * r + 67265.7709270087) * r + 45921.95393154987) * r +
      13731.69376550946) *
      r +
      1971.5909503065513) *
      r +
      133.14166789178438) *
      r +
    3.3871328727963665;
  const below =
    ((((((5226.495278852854 * r + 28729.085735721943) * r + 39307.89580009271) * r + 21213.794301586597) * r +
      5394.196021424751) *
      r +
      687.1870074920579) *
      r +
      42.31333070160091) *
      r +
    1;
  return above / below;
}

function middleRatio(r: number): number {
  const above =
    ((((((0.0007745450142783414 * r + 0.022723844989269184) * r + 0.2417807251774506) * r +
      1.2704582524523684) *
      r +
      3.6478483247632045) *
      r +
      5.769497221460691) *
      r +
      4.630337846156546) *
      r +
    1.4234371107496835;
  const below =
    ((((((1.0507500716444169e-9 * r + 0.0005475938084995345) * r + 0.015198666563616457) * r +
      0.14810397642748008) *
      r +
      0.6897673349851) *
      r +
      1.6763848301838038) *
      r +
      2.053191626637759) *
      r +
    1;
  return above / below;
}

function farRatio(r: number): number {
  const above =
    ((((((2.0103343992922881e-7 * r + 2.7115555687434876e-5) * r + 0.0012426609473880784) * r +
      0.026532189526576124) *
      r +
      0.29656057182850487) *
      r +
      1.7848265399172913) *
      r +
      5.463784911164114) *
      r +
    6.657904643501103;
  const below =
    ((((((2.0442631033899397e-15 * r + 1.421511758316446e-7) * r + 1.8463183175100548e-5) * r +
      0.0007868691311456133) *
      r +
      0.014875361290850615) *
      r +
      0.1369298809227358) *
      r +
      0.599832206555888) *
      r +
    1;
  return above / below;
}

const ONE_OVER_SQRT_2PI = 0.3989422804014327;

/**
 * Distribution function of the standard normal, relative error about 1e−15 wherever the result is a normal number (x > −38).
 *
 * Source: Cody, Rational Chebyshev approximations for the error function, Math. Comp. 23 (1969) 631–638. Checked in tests/published/normal.
 */
export function normalCdf(x: number): number {
  const size = Math.abs(x);
  if (size <= 0.67448975) return 0.5 + x * nearRatio(x * x);
  const tail = size <= 5.656854249492381 ? middleTail(size) : farTail(size);
  return x < 0 ? tail : 1 - tail;
}

/** exp(−size²/2) with size cut to a multiple of 1/16, so that the square is exact. */
function bell(size: number): number {
  const cut = Math.floor(size * 16) / 16;
  return exp(-0.5 * cut * cut) * exp(-0.5 * (size - cut) * (size + cut));
}

function nearRatio(z: number): number {
  const above =
    (((0.06568233791820745 * z + 2.2352520354606837) * z + 161.02823106855587) * z + 1067.6894854603709) * z +
    18154.98125334356;
  const below =
    (((z + 47.202581904688245) * z + 976.0985517377767) * z + 10260.932208618979) * z + 45507.78933502673;
  return above / below;
}

function middleTail(y: number): number {
  const above =
    (((((((1.0765576773720192e-8 * y + 0.39894151208813466) * y + 8.883149794388377) * y +
      93.50665613217785) *
      y +
      597.2702763948002) *
      y +
      2494.5375852903726) *
      y +
      6848.190450536283) *
      y +
      11602.65143764735) *
      y +
    9842.714838383978;
  const below =
    (((((((y + 22.266688044328117) * y + 235.387901782625) * y + 1519.3775994075547) * y +
      6485.558298266761) *
      y +
      18615.571640885097) *
      y +
      34900.95272114598) *
      y +
      38912.00328609327) *
      y +
    19685.429676859992;
  return bell(y) * (above / below);
}

function farTail(y: number): number {
  if (y > 40) return 0;
  const z = 1 / (y * y);
  const above =
    ((((0.023073441764940174 * z + 0.215898534057957) * z + 0.12740116116024736) * z + 0.022235277870649807) *
      z +
      0.0014216191932278934) *
      z +
    2.9112874951168793e-5;
  const below =
    ((((z + 1.284260096144911) * z + 0.4682382124808651) * z + 0.06598813786892856) * z +
      0.0037823963320275824) *
      z +
    7.297515550839662e-5;
  return (bell(y) * (ONE_OVER_SQRT_2PI - z * (above / below))) / y;
}
