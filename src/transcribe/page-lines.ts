/** A line of pasted text in, whether it belongs to the page or the email it was pasted from out. */

/** `Page 2 of 5`, `- 3 -`, `p. 4`, `2/5`, and a title with the page behind it. */
export function isPageNumber(text: string): boolean {
  return (
    /^(?:\W*(?:page|pg|p)\.?\s*\d{1,3}(?:\s*(?:of|\/)\s*\d{1,3})?\W*|\W*\d{1,3}\W*|\d{1,3}\s*\/\s*\d{1,3})$/i.test(
      text,
    ) || /[|·•–—-]\s*page\s+\d{1,3}(?:\s*(?:of|\/)\s*\d{1,3})?$/i.test(text)
  );
}

/** `From: …`, `On 3 May … wrote:`, `-----Original Message-----`; `CC: …` only where it is no yarn, `below` others. */
export function isEmailHeading(text: string, below: boolean): boolean {
  return (
    /^(?:subject|reply-to|sent):\s/i.test(text) ||
    /^(?:from|to|cc|bcc)\s*:.*@/i.test(text) ||
    (below && /^(?:from|to|cc|bcc|date|attachments?):\s/i.test(text)) ||
    /^from:\s/i.test(text) ||
    /^on\b.{4,120}\bwrote:$/i.test(text) ||
    /^-*\s*(?:original message|forwarded message|begin forwarded message:?)\s*-*$/i.test(text) ||
    /^\S+@\S+\.\S+$/.test(text)
  );
}

/** What an email is about: `Fwd: Marram Coaster` -> `Marram Coaster`. */
export function emailSubject(text: string): string | null {
  const subject = /^subject:\s*(.*)$/i.exec(text)?.[1];
  const plain = subject?.replace(/^(?:\s*(?:re|fw|fwd|aw)\s*:\s*)+/i, '').trim();
  return plain === undefined || plain === '' ? null : plain;
}

/** `Dear Mim,`, `Love, Petra`, `Happy hooking!` */
export function isGreeting(text: string): boolean {
  return /^(?:hi|hello|hey|dear|love|best|best wishes|kind regards|regards|cheers|thanks|many thanks|thank you|yours|yours sincerely|warmly|happy (?:hooking|crocheting|stitching))\b[^.:;*()\d]{0,30}[,!]?$/i.test(
    text,
  );
}

/** The heads of a table's columns: `Rnd | Instructions | Stitches`; gives what its first column counts. */
export function tableUnit(cells: readonly string[]): string | null {
  const [first = '', ...rest] = cells;
  const unit =
    /^(row|rnd|round|r)s?(?:\s*(?:no|#|number)\.?)?$/i.exec(first)?.[1] ??
    (/^(?:#|no\.?|number)$/i.test(first) ? '' : null);
  if (unit === null || unit === undefined || rest.length === 0) return null;
  const heads = rest.every((cell) =>
    /^(?:instructions?|pattern|directions?|what to do|work|worked|squares|first|then|next|colou?rs?|stitch(?:es)?|sts?|count|total|stitch count|st count|notes?|repeats?)$/i.test(
      cell,
    ),
  );
  return heads ? unit : null;
}
