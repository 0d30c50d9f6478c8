import { shellTexts } from "../../texts/english/shell.ts";
import { isLanguage, type Language, nearestLanguage, speak, spokenLanguage } from "../../texts/language.ts";
import type { Desk } from "./desk.svelte.ts";
import { readSetting, writeSetting } from "./settings.ts";

/** As chosen, else as the browser asks for. */
function wantedLanguage(): Language {
  const chosen = readSetting("language");
  return isLanguage(chosen) ? chosen : nearestLanguage(navigator.languages);
}

/** Speaks the wanted language before anything is shown; English where its texts cannot be fetched. */
export async function startLanguage(): Promise<void> {
  const wanted = wantedLanguage();
  if (wanted === "en") return;
  try {
    await speak(wanted);
  } catch {
    // Offline and never fetched: English is there.
  }
  document.documentElement.lang = spokenLanguage();
  document.title = shellTexts.pageTitle;
  document.querySelector("meta[name=description]")?.setAttribute("content", shellTexts.pageDescription);
}

/**
 * Opens the page anew in another language, after everything on the desk is written down.
 *
 * @returns false, and nothing happens, where it cannot be written down: it would be lost
 */
export async function changeLanguage(wanted: Language, desk: Desk): Promise<boolean> {
  await desk.flush();
  if (desk.saveState === "failed") return false;
  writeSetting("language", wanted);
  location.reload();
  return true;
}
