/** A sentence in, whether it leaves something to the maker's wish: no row counts on what it tells. */

/**
 * `If you want a loop, ch 14 …`, `For a sturdier handle, join …`. Not `If making size L, work 2 more rows`: that is work
 * for some, which must not be lost.
 */
export function tellsChoice(text: string): boolean {
  return CHOICE.test(text);
}

const CHOICE =
  /^(?:if (?:you(?:[’']d| would| want| wish| like| prefer)|desired|wanted|preferred|necessary|needed|yours)\b|optional(?:ly)?\b|for (?:an?\s+)?(?:more|less|extra|different|another|other|\w+er)\s+\w+,)/i;
