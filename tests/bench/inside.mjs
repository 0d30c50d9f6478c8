/** Runs one bundled benchmark, given by its path, and prints its rows as JSON. */
import { pathToFileURL } from "node:url";

const [, , file = ""] = process.argv;
const { bench } = await import(pathToFileURL(file).href);
process.stdout.write(JSON.stringify(await bench()));
