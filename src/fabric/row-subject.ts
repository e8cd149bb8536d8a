/** A row's label in, what messages call the row out: a line without a label is still somewhere. */

/** `Row 3`; "this line" where there is no label. */
export function rowSubject(label: string): string {
  return label === '' ? 'this line' : label;
}
