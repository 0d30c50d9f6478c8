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
