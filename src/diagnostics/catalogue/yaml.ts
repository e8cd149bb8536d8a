/** Facts about how a pattern file is set out in, the words of a fault out: one function per code. */

import type { Wording } from '../diagnostic.ts';

const LEFT_UNREAD = 'The lines below it cannot be told apart, so the pattern is not read.';

export const yamlFaults = {
  'yaml/tab': (): Wording => ({
    severity: 'error',
    message: 'this line is set in with a tab',
    why: 'Tabs are as wide as each screen likes, so which line belongs to which cannot be told.',
    try: 'set it in with spaces, two for each step.',
  }),
  'yaml/indent': (): Wording => ({
    severity: 'error',
    message: 'this line is set in neither as far as the line it belongs to nor a step further',
    why: 'How far a line is set in says what it belongs to, and this one belongs to nothing.',
    try: 'start it in the same column as its neighbours of the same kind.',
  }),
  'yaml/colon': (): Wording => ({
    severity: 'error',
    message: 'a colon with a space after it stands within plain text',
    why: 'It reads as the end of a key, so the words before it are not taken as text.',
    try: 'put the whole text in "quotes", or write | after the key and the text on the lines below.',
  }),
  'yaml/no-colon': ({ line }: { readonly line: string }): Wording => ({
    severity: 'error',
    message: 'this line has no key',
    why: LEFT_UNREAD,
    try: afterNoColon(line),
  }),
  'yaml/not-closed': ({ character }: Character): Wording => ({
    severity: 'error',
    message: `this ${character} is never closed`,
    why: 'Everything after it is taken as part of it.',
    try: `put ${closing(character)} where it ends.`,
  }),
  'yaml/not-opened': ({ character }: Character): Wording => ({
    severity: 'error',
    message: `this ${character} closes nothing`,
    why: LEFT_UNREAD,
    try: 'take it away, or put its opening bracket before it.',
  }),
  'yaml/same-key': ({ key }: { readonly key: string }): Wording => ({
    severity: 'error',
    message: `"${key}" is given twice`,
    why: 'Only one of the two can hold, and a reader of the file cannot know which.',
    try: 'keep one and take the other away.',
  }),
  'yaml/starts-with': ({ character }: Character): Wording => ({
    severity: 'error',
    message: `text that begins with ${character} is not read as plain text`,
    why: `A pattern file keeps ${character} at the start of a value for a purpose of its own.`,
    try: '|>'.includes(character)
      ? `begin the text on the line below the ${character}, or put it in "quotes".`
      : 'put the whole text in "quotes", or write | after the key and the text on the lines below.',
  }),
  'yaml/hash': ({ text }: { readonly text: string }): Wording => ({
    severity: 'error',
    message: `${text} and all after it on this line is taken as a remark`,
    why: 'After a space, # begins a remark that is not read.',
    try: `put it in quotes: "${text}".`,
  }),
  'yaml/escape': ({ text }: { readonly text: string }): Wording => ({
    severity: 'error',
    message: `${text} has no meaning within "double quotes"`,
    why: 'Between double quotes a backslash begins a sign of its own, such as \\n for a new line.',
    try: "use 'single quotes', or write the backslash twice.",
  }),
  'yaml/two-documents': (): Wording => ({
    severity: 'error',
    message: 'a second document begins here',
    why: 'A file holds one pattern; what follows is not read.',
    try: 'take the --- or ... away, or put the second pattern in a folder of its own.',
  }),
  'yaml/too-much': ({ characters, values, depth }: TooMuch): Wording => ({
    severity: 'error',
    message: 'this holds itself, or more than a pattern can',
    why: `A file may have ${characters.toLocaleString('en')} characters, ${values.toLocaleString('en')} values and brackets ${depth} deep, no more.`,
    try: 'write what is meant in place of the * names, and keep brackets a few deep.',
  }),
  'yaml/unreadable': ({ text }: { readonly text: string }): Wording => ({
    severity: 'error',
    message: `"${shortened(text)}" cannot be read here`,
    why: LEFT_UNREAD,
    try: 'write it as  key: text  and put text with signs in it in "quotes".',
  }),
} as const;

interface TooMuch {
  readonly characters: number;
  readonly values: number;
  readonly depth: number;
}

interface Character {
  readonly character: string;
}

function closing(opening: string): string {
  return { '{': 'a }', '[': 'a ]' }[opening] ?? `another ${opening}`;
}

function afterNoColon(line: string): string {
  const [word = ''] = line.split(/\s/);
  if (/^[^:]+:\S/.test(line)) return 'put a space after the colon.';
  return `if "${shortened(word)}" is the key, put a colon and a space after it; if it is text, set it in further than its key.`;
}

function shortened(text: string): string {
  const [line = ''] = text.split('\n');
  return line.length > 40 ? `${line.slice(0, 39)}…` : line;
}
