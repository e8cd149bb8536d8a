/** What can be wrong with a pattern's file before it is read -> the fault in a maker's words. */

import type { Diagnostic, Severity, Wording } from '../diagnostics/diagnostic.ts';

/** A file beyond this is not read at all. */
export const MOST_BYTES = 1_000_000;

const diskFaults = {
  'path/missing': (): Wording => ({
    severity: 'error',
    message: 'there is no such file or folder',
    why: 'Nothing can be read from it.',
    try: 'check the spelling; a pattern is a folder with a pattern.yaml in it, such as patterns/my-square.',
  }),
  'path/no-pattern': (): Wording => ({
    severity: 'error',
    message: 'this folder has no pattern.yaml in it, and none of its folders has one',
    why: 'A pattern is the pattern.yaml in a folder of its own.',
    try: 'name the folder that holds pattern.yaml, or start one with: npm run -s rowfold -- new my-square',
  }),
  'path/not-text': (): Wording => ({
    severity: 'error',
    message: 'the file is not plain text in UTF-8',
    why: 'Some of its letters would be read as others, so no count could be trusted.',
    try: 'save it again as plain text with the encoding UTF-8.',
  }),
  'path/too-large': (): Wording => ({
    severity: 'error',
    message: `the file is larger than a pattern can be; ${MOST_BYTES.toLocaleString('en')} bytes is the most`,
    why: 'The longest patterns are a twentieth of that, so this is likely another file.',
    try: 'name the file of the pattern, or leave in it only what belongs to the pattern.',
  }),
  'path/unreadable': (): Wording => ({
    severity: 'error',
    message: 'the file is there but may not be read',
    why: 'Nothing can be checked without it.',
    try: 'give yourself the right to read it.',
  }),
} as const;

export type DiskFaultCode = keyof typeof diskFaults;

/** A warning where the file was not asked for by name. */
export function diskFault(code: DiskFaultCode, file: string, severity: Severity = 'error'): Diagnostic {
  return { code, ...diskFaults[code](), severity, file, span: { start: 0, end: 0 }, labels: [], sizes: [] };
}
