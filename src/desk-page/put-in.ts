/** A page that the server made anew -> what is new of it put into this one, with focus and every scrolled place as they were. */

export function putIn(made: Document): void {
  const focused = document.activeElement;
  document.title = made.title;
  for (const old of document.querySelectorAll('[data-fresh]')) {
    const newer = made.getElementById(old.id);
    if (newer !== null) become(old, newer);
  }
  if (focused !== null && !focused.isConnected) focusLike(focused);
}

/** What had the focus and was replaced: the link in its place has it. */
function focusLike(gone: Element): void {
  const href = gone.getAttribute('href');
  if (href === null) return;
  for (const link of document.querySelectorAll<HTMLElement>('main a[href]'))
    if (link.getAttribute('href') === href) {
      link.focus({ preventScroll: true });
      return;
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
    old.replaceChildren(...newer.childNodes);
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
  if (textsBetween(old) !== textsBetween(newer)) {
    old.replaceChildren(...newer.childNodes);
    return;
  }
  const paired = mine.length === wanted.length ? mine : byId(mine, wanted);
  const staying = new Set(paired);
  for (const one of mine) if (!staying.has(one)) one.remove();
  let behind = ours[ours.length - tail] ?? null;
  // From the end, so that each has its place before the one behind it.
  for (let i = wanted.length - 1; i >= 0; i--) {
    const one = wanted[i];
    const place = paired[i];
    if (one === undefined) continue;
    if (place === null || place === undefined) old.insertBefore(one, behind);
    else become(place, one);
    behind = place?.isConnected ? place : one;
  }
}

/** For each that is wanted the one of ours with its id, null where there is none. */
function byId(ours: readonly Element[], wanted: readonly Element[]): readonly (Element | null)[] {
  const named = new Map(ours.flatMap((one) => (one.id === '' ? [] : [[one.id, one] as const])));
  return wanted.map(({ id }) => (id === '' ? null : (named.get(id) ?? null)));
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
