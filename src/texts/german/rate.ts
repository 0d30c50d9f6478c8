import type { Catalogue } from "../catalogue.ts";

export const rateTexts: Catalogue["rate"] = {
  points: (value, most) => `${value} von ${most} Punkten`,
  ballsBy: (share, seconds) => `${share} von 100 Bällen bis ${seconds} s`,
  runs: (share) => `${share} von 100 Läufen`,
  likely: (low, high) => `wahrscheinlich zwischen ${low} und ${high}`,
  meanBalls: (mean, balls) => `${mean} von ${balls} ${balls === 1 ? "Ball" : "Bällen"}`,
  titles: {
    everyBall: "jeder Ball im Ziel in",
    points: "Punkte",
    homeBy: (seconds) => `im Ziel bis ${seconds} s`,
  },
};
