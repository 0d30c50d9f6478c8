/** Small choices kept in this browser. Storage may be switched off: then a choice holds until the page is closed. */
export function readSetting(name: string): string | null {
  try {
    return localStorage.getItem(`wedgeward.${name}`);
  } catch {
    return null;
  }
}

export function writeSetting(name: string, value: string): void {
  try {
    localStorage.setItem(`wedgeward.${name}`, value);
  } catch {
    // Nothing is lost but the memory of a choice.
  }
}

export function forgetSetting(name: string): void {
  try {
    localStorage.removeItem(`wedgeward.${name}`);
  } catch {
    // There is nothing to forget.
  }
}

/** How the names begin under which a page that goes leaves what it could not write any more (project/rescue). */
export const RESCUE = "rescue-";

/** Names of the settings that begin so. */
export function settingsLike(start: string): readonly string[] {
  const prefix = "wedgeward.";
  try {
    const keys = Object.keys(localStorage).filter((key) => key.startsWith(prefix + start));
    return keys.map((key) => key.slice(prefix.length));
  } catch {
    return [];
  }
}

/** As the settings, but a tab's own: what it had open before a reload. Another tab's choice counts only for a new tab. */
export function readTabSetting(name: string): string | null {
  try {
    return sessionStorage.getItem(`wedgeward.${name}`) ?? readSetting(name);
  } catch {
    return readSetting(name);
  }
}

export function writeTabSetting(name: string, value: string): void {
  writeSetting(name, value);
  try {
    sessionStorage.setItem(`wedgeward.${name}`, value);
  } catch {
    // A reload then opens what the last tab had open.
  }
}
