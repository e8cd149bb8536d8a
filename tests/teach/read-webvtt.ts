/**
 * A WebVTT file's text in, its cues out; or an error at whatever the standard's syntax does not allow. Written from W3C
 * WebVTT: The Web Video Text Tracks Format, "WebVTT file structure", as far as a file of chapters uses it; its stricter
 * "chapter title text" for the cues.
 */

export interface Cue {
  readonly id: string | null;
  readonly start: number;
  readonly end: number;
  readonly title: string;
}

const TIMES = /^((?:\d{2,}:)?[0-5]\d:[0-5]\d\.\d{3})[ \t]+-->[ \t]+((?:\d{2,}:)?[0-5]\d:[0-5]\d\.\d{3})$/;
const ESCAPES: Readonly<Record<string, string>> = { '&amp;': '&', '&lt;': '<', '&gt;': '>' };

export function readWebVtt(text: string): Cue[] {
  if (!/^WEBVTT(?:[ \t][^\n]*)?\n\n/.test(text)) throw new Error('no header with an empty line below it');
  if (/\r|\0/.test(text) || !text.endsWith('\n')) throw new Error('lines do not end as they should');
  const blocks = text
    .replace(/^[^\n]*\n\n+/, '')
    .replace(/\n+$/, '')
    .split(/\n\n+/);
  const cues = blocks.map(readCue);
  for (const [i, { start, end }] of cues.entries()) {
    if (end <= start) throw new Error(`cue ${i + 1} ends before it begins`);
    const before = cues[i - 1];
    // Of chapters: in order, and none within another.
    if (before !== undefined && start < before.end)
      throw new Error(`cue ${i + 1} begins within the one before`);
  }
  return cues;
}

function readCue(block: string): Cue {
  const lines = block.split('\n');
  const id = lines[0]?.includes('-->') ? null : (lines.shift() ?? null);
  const [, start, end] = TIMES.exec(lines.shift() ?? '') ?? [];
  if (start === undefined || end === undefined) throw new Error(`no times in: ${block}`);
  const [title, more] = lines;
  if (title === undefined || title === '' || more !== undefined)
    throw new Error(`a title is one line: ${block}`);
  if (/-->|<|>|&(?!(?:amp|lt|gt);)/.test(title)) throw new Error(`not escaped: ${title}`);
  return {
    id,
    start: secondsOf(start),
    end: secondsOf(end),
    title: title.replace(/&(?:amp|lt|gt);/g, (found) => ESCAPES[found] ?? found),
  };
}

function secondsOf(stamp: string): number {
  return stamp.split(':').reduce((sum, figure) => sum * 60 + Number(figure), 0);
}
