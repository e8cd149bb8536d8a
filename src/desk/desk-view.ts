/** What the designer's desk shows: the patterns to choose from, and the one that lies open. */

import type { CompiledPattern } from '../compiled.ts';
import type { Scene } from '../scene/scene.ts';
import type { DialectKey } from '../wording/words.ts';

/** A pattern that can be laid on the desk. */
export interface DeskFile {
  /** Its path as it is typed, `patterns/my-square/pattern.yaml`: no two are the same, whatever their titles. */
  readonly file: string;
  readonly title: string;
  /** Errors it had when it was last checked. */
  readonly errors: number;
}

/** A file that keeps the site from being built, and cannot lie on the desk: an along, for one. */
export type OtherFile = Pick<DeskFile, 'file' | 'errors'>;

/** The pattern that lies open, as its file stands or as it is being written. */
export interface OpenFile {
  readonly file: string;
  readonly text: string;
  /** Stands for the text in the file, so that one changed meanwhile is never written over. */
  readonly stamp: string;
  /** The file can be read as text, and so be written in the page. */
  readonly writable: boolean;
  readonly compiled: CompiledPattern;
  /** Place of the size among those worked, and the words it is shown in. */
  readonly size: number;
  readonly dialect: DialectKey;
  /** Pages of the booklet, made where there is no error. */
  readonly booklet: () => readonly Scene[];
  /** What takes long to draw was asked for all the same. */
  readonly drawLarge: boolean;
  /** Only what is ready at once: the text with its faults, rows and sizes. The rest is asked for after it. */
  readonly soon: boolean;
}

export interface DeskView {
  readonly files: readonly DeskFile[];
  readonly others: readonly OtherFile[];
  /** Why the site could not be built, where no pattern's file is the reason. */
  readonly siteFault: string | null;
  /** Null where there is no such file; `asked` says which was asked for. */
  readonly open: OpenFile | null;
  readonly asked: string | null;
  /** Goes back with whatever the page asks to be written: other pages do not know it. */
  readonly token: string;
  /** How far things were when this was read. */
  readonly news: string;
}

/** Everything of the desk begins so; no pattern's folder begins with a full stop. */
export const DESK_ADDRESS = '/.desk/';

/** The address of the desk with a pattern on it. */
export function deskHref(file: string): string {
  return `${DESK_ADDRESS}?file=${encodeURIComponent(file)}`;
}
