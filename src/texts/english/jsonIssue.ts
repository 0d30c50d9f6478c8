import { topic } from "../language.ts";

/** What can be wrong with a file before it is known what it says: JSON that is none. */
export const jsonIssueTexts = topic("jsonIssue", {
  tooLarge: "The file is larger than 1 MB; a project file has a few kB. Is it the right file?",
  place: (line: number, column: number) => `Line ${line}, column ${column}`,
  openText: "a text does not end on its line",
  closingQuote: 'a closing " (line breaks inside are written \\n)',
  badEscape: "a backslash stands before something it cannot stand before",
  escapes: (plain: string, coded: string) => `${plain} or ${coded} with four hex digits`,
  end: "the end of the file",
  afterEnd: "there is something after the end of the project",
  noValue: "a value is missing or not written as JSON",
  aValue: (others: string) => `a number, a text in "double quotes", ${others}`,
  noKey: "a key is missing",
  aKey: 'a key in "double quotes" (no comma after the last entry, no comments)',
  noColon: (key: string) => `the colon after the key "${key}" is missing`,
  noBrace: "a comma or the closing brace is missing",
  noBracket: "a comma or the closing bracket is missing",
  or: (one: string, other: string) => `${one} or ${other}`,
  unsafeKey: "This key has a special meaning in programs and is refused; take it out.",
  theKey: (key: string) => `the key "${key}"`,
  noSuchKey: "no such key",
  twice: "This key is there twice; keep one of the two.",
  theKeyTwice: (key: string) => `the key "${key}" twice`,
  onceEach: "each key once",
  tooDeep: "lists and objects are nested too deeply",
  moreLevels: (most: number) => `more than ${most} levels`,
});
