/** Elements of a page, made with their attributes and what stands in them. */

type Inside = Node | string | null;

/** `null` inside is left out. Text is set as text: nothing that a reader or a pattern says becomes markup. */
export function element(
  tag: string,
  attributes: Readonly<Record<string, string>> = {},
  ...inside: readonly Inside[]
): HTMLElement {
  const made = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) made.setAttribute(name, value);
  made.append(...inside.filter((one) => one !== null));
  return made;
}

/** A drawing of our own making. */
export function drawing(svg: string): Node {
  const holder = document.createElement('template');
  holder.innerHTML = svg;
  return holder.content;
}

/** Element of the page that its layout is sure to have. */
export function found<T extends Element = HTMLElement>(selector: string): T {
  const one = document.querySelector<T>(selector);
  if (one === null) throw new Error(`the page has no ${selector}`);
  return one;
}
