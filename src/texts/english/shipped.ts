import { topic } from "../language.ts";

/** What shipped projects are called, by their file's id; what the file itself says is given along, and is English. */
export const shippedTexts = topic("shipped", {
  title: (_id: string, title: string) => title,
  name: (_id: string, name: string) => name,
  note: (_id: string, note: string) => note,
  robot: (_id: string, name: string) => name,
});
