import type { Catalogue } from "../catalogue.ts";

const runsOf = (runs: number) => (runs === 1 ? "1 Lauf" : `${runs} Läufen`);

export const chartTexts: Catalogue["chart"] = {
  fixes: "Was jede Änderung bringen würde",
  noFixes: "Keine Änderung wurde probiert.",
  fixAxis: "so viele mehr oder weniger von 100 Läufen mit jedem Ball im Ziel",
  verdict: { helps: "hilft", harms: "schadet", open: "nicht zu unterscheiden" },
  losses: "Warum Bälle verloren gingen",
  noLoss: (runs) => `In ${runsOf(runs)} ging kein Ball verloren.`,
  lossesOf: (runs, list) => `Verlorene Bälle in ${runsOf(runs)}: ${list}.`,
  lossesARun: (balls, each) => `${balls} (${each} je Lauf)`,
  time: "Wann die Bälle im Ziel sind",
  timeAxis: "Sekunden seit dem Start",
  runsAxis: "von 100 Läufen",
  allBalls: (balls) => (balls === 1 ? "der Ball" : `alle ${balls}`),
  someBalls: (balls) => `${balls} oder mehr`,
  stopAt: (seconds) => `aufhören bei ${seconds} s`,
  homeIn: (balls, share) => `mindestens ${balls} im Ziel in ${share} von 100 Läufen`,
  timeInWords: (seconds, list, runs, band) =>
    `Bis Sekunde ${seconds}: ${list}. Aus ${runsOf(runs)}; die Anteile sind auf ${band} von 100 genau bekannt.`,
  bestStop: (seconds) => ` Am besten hört die Routine bei Sekunde ${seconds} auf.`,
  noTrades: "Noch ist nichts bekannt.",
  trades: (list) => `Vom kleinsten Aufwand zum größten: ${list}.`,
};
