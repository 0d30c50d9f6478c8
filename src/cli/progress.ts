/** A line that says how far a long job is. */
export interface Progress {
  /** @param doneFrac share of the work that is done, 0 … 1 */
  show(doneFrac: number, text: string): void;
  /** Clears the line; call it before anything else is printed. */
  end(): void;
}

/** Shown anew at most this often, ms. */
const INTERVAL_MS = 100;

/** One line on a terminal, rewritten in place. */
export function terminalProgress(stream: NodeJS.WriteStream): Progress {
  let shownAt = 0;
  return {
    show: (doneFrac, text) => {
      const now = performance.now();
      if (now - shownAt < INTERVAL_MS && doneFrac < 1) return;
      shownAt = now;
      // Some terminals do not know their width and say 0.
      const line = `${percentText(doneFrac)} ${text}`.slice(0, (stream.columns || 80) - 1);
      stream.write(`\r\x1b[2K${line}`);
    },
    end: () => stream.write("\r\x1b[2K"),
  };
}

/** A line for each tenth of the work: for logs. */
export function logProgress(stream: NodeJS.WritableStream): Progress {
  let tenths = 0;
  return {
    show: (doneFrac, text) => {
      if (Math.floor(doneFrac * 10) <= tenths) return;
      tenths = Math.floor(doneFrac * 10);
      stream.write(`${percentText(doneFrac)} ${text}\n`);
    },
    end: () => {},
  };
}

export const silentProgress: Progress = { show: () => {}, end: () => {} };

/** Progress of the commands: on standard error, and only when a person looks at it. */
export function commandProgress(): Progress {
  return process.stderr.isTTY ? terminalProgress(process.stderr) : silentProgress;
}

function percentText(doneFrac: number): string {
  return `${Math.floor(doneFrac * 100)} %`.padStart(5);
}
