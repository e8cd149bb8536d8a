/** The last of a list; undefined of an empty one, where the engine would look long for a place before the first. */
export function lastOf<Item>(list: readonly Item[]): Item | undefined {
  return list.length > 0 ? list[list.length - 1] : undefined;
}
