/** What was written on the desk and not saved, and which text of the file it was written over. */

export interface Draft {
  readonly text: string;
  readonly stamp: string;
}

export function isDraft(value: unknown): value is Draft {
  return (
    typeof value === 'object' &&
    value !== null &&
    'text' in value &&
    typeof value.text === 'string' &&
    'stamp' in value &&
    typeof value.stamp === 'string'
  );
}
