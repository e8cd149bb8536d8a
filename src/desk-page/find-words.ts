/** A field, a line of it and a stretch of that line -> those words marked and brought into sight. */

export interface Stretch {
  /** Counted from 1. */
  readonly line: number;
  readonly from: number;
  readonly to: number;
}

export function findWords(area: HTMLTextAreaElement, { line, from, to }: Stretch): void {
  const lines = area.value.split('\n');
  const start = lines.slice(0, line - 1).reduce((sum, each) => sum + each.length + 1, 0);
  const length = lines[line - 1]?.length ?? 0;
  area.focus();
  area.setSelectionRange(start + Math.min(from, length), start + Math.min(Math.max(to, from), length));
  const above = heightOf(area, area.value.slice(0, start));
  area.scrollTop = Math.max(0, above - area.clientHeight / 3);
}

/** How high a text stands in the field, its long lines broken as they are there. */
function heightOf(area: HTMLTextAreaElement, text: string): number {
  const measure = document.importNode(area);
  measure.removeAttribute('id');
  measure.removeAttribute('name');
  measure.className = 'unseen measure';
  measure.tabIndex = -1;
  measure.setAttribute('aria-hidden', 'true');
  measure.rows = 1;
  measure.style.width = `${area.offsetWidth}px`;
  measure.value = text;
  area.after(measure);
  const height = measure.scrollHeight;
  measure.remove();
  return height;
}
