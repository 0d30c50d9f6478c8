import { topic } from "../language.ts";

/** What is said of the run on the drawing, and of the search for one. */
export const runNoticeTexts = topic("runNotice", {
  failed: (why: string) => `This did not work: ${why}`,
  beatsStill: "A layout that beats the routine, without any drift.",
  hard: "A layout the routine finds hard.",
  variant: (label: string, number: string) => `${label} (variant ${number})`,
  noRun: {
    failed: (limit: number) => `No run failed among the ${limit} looked at.`,
    worked: (limit: number) => `No run worked among the ${limit} looked at.`,
  },
});
