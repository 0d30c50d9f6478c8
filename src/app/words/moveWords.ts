export { moveWords } from "../../report/moveWords.ts";
