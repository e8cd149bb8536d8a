/** What every verb of the command line is made of: its name, its help, what it takes, and what it does. */

/** What a run may write to. Lines to standard output are the answer; all else goes to standard error. */
export interface Terminal {
  readonly say: (line: string) => void;
  readonly tell: (line: string) => void;
  /** Whether the faults may be coloured. */
  readonly colour: boolean;
  /** Characters a line may have. */
  readonly width: number;
  /** Writes over the line at the foot of the terminal, `''` clears it; null where what is written is no terminal. */
  readonly over: ((line: string) => void) | null;
  /** Puts a question and gives what was typed, null where she typed nothing more; null where nobody can be asked. */
  readonly ask: ((question: string) => Promise<string | null>) | null;
}

/** The arguments after the verb, flags known and their values given. */
export interface Arguments {
  readonly paths: readonly string[];
  readonly flags: ReadonlySet<string>;
  readonly values: ReadonlyMap<string, string>;
}

export interface Flag {
  readonly name: string;
  /** The word for its value in the help, or null for a flag that takes none. */
  readonly value: string | null;
  readonly about: string;
}

export interface Verb {
  readonly name: string;
  /** `[PATH…] [--json]`. */
  readonly takes: string;
  /** One line for the list of verbs. */
  readonly about: string;
  /** How many paths or names it takes. */
  readonly least: number;
  readonly most: number;
  readonly flags: readonly Flag[];
  /** What `--help` says beyond the list of flags, an example first. */
  readonly teaches: string;
  readonly run: (given: Arguments, terminal: Terminal) => Promise<ExitCode>;
}

/** 0 all well, 1 faults in the patterns, 2 wrong use. */
export type ExitCode = 0 | 1 | 2;
