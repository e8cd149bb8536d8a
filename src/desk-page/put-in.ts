/** A page that the server made anew -> what is new of it put into this one, with focus and every scrolled place as they were. */

/** Elements that are told apart by their place alone, one after another: lines of a text, sheets. */
const IN_ORDER = 'ol.lines, [data-fresh], #made';

export function putIn(made: Document): void {
  document.title = made.title;
  for (const old of document.querySelectorAll('[data-fresh]')) {
    const newer = made.getElementById(old.id);
    if (newer !== null) become(old, newer);
  }
}

/** Only what differs is replaced: whatever stays has its focus, and stands where it stood. */
function become(old: Element, newer: Element): void {
  if (old.isEqualNode(newer)) return;
  const alike = old.tagName === newer.tagName && old.id === newer.id;
  if (!alike) {
    old.replaceWith(newer);
    return;
  }
  for (const { name } of [...old.attributes]) if (!newer.hasAttribute(name)) old.removeAttribute(name);
  for (const { name, value } of newer.attributes)
    if (old.getAttribute(name) !== value) old.setAttribute(name, value);
  if (old.children.length === 0 || newer.children.length === 0 || old.matches('svg')) {
    replaceInside(old, newer);
    return;
  }
  const theirs = [...newer.children];
  const ours = [...old.children];
  let head = 0;
  while (head < Math.min(ours.length, theirs.length) && same(ours[head], theirs[head])) head++;
  let tail = 0;
  while (
    tail < Math.min(ours.length, theirs.length) - head &&
    same(ours[ours.length - 1 - tail], theirs[theirs.length - 1 - tail])
  )
    tail++;
  const mine = ours.slice(head, ours.length - tail);
  const wanted = theirs.slice(head, theirs.length - tail);
  // As many as before: each turns into the one in its place.
  if (mine.length === wanted.length && textsBetween(old) === textsBetween(newer)) {
    for (const [i, one] of mine.entries()) {
      const other = wanted[i];
      if (other !== undefined) become(one, other);
    }
    return;
  }
  if (!old.matches(IN_ORDER)) {
    replaceInside(old, newer);
    return;
  }
  const behind = ours[ours.length - tail] ?? null;
  for (const one of mine) one.remove();
  for (const one of wanted) old.insertBefore(one, behind);
}

function same(one: Element | undefined, other: Element | undefined): boolean {
  return one !== undefined && other !== undefined && one.isEqualNode(other);
}

/** Words that stand in an element itself, beside the elements in it. */
function textsBetween(element: Element): string {
  return [...element.childNodes]
    .filter((node) => node.nodeType === Node.TEXT_NODE)
    .map((node) => node.textContent?.trim() ?? '')
    .join('\n');
}

/** A link that had the focus has it again where the new one has a link to the same place. */
function replaceInside(old: Element, newer: Element): void {
  const focused = document.activeElement;
  const href = focused !== null && old.contains(focused) ? focused.getAttribute('href') : null;
  old.replaceChildren(...newer.childNodes);
  if (href === null) return;
  for (const link of old.querySelectorAll<HTMLElement>('a[href]'))
    if (link.getAttribute('href') === href) {
      link.focus({ preventScroll: true });
      return;
    }
}
