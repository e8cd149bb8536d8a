/** What a reader's browser keeps for her, and nobody else sees; nothing where she has switched that off. */

export function readKept<T>(key: string, isRight: (value: unknown) => value is T): T | null {
  try {
    const value: unknown = JSON.parse(localStorage.getItem(key) ?? 'null');
    return isRight(value) ? value : null;
  } catch {
    return null;
  }
}

export function keep(key: string, value: unknown): void {
  try {
    localStorage.setItem(key, JSON.stringify(value));
  } catch {
    // A full or forbidden store keeps nothing: the page works all the same, until it is closed.
  }
}
