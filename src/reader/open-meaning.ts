/** An abbreviation that is pressed opens what its row's words mean; a script does no more than open what is there. */

export function openMeanings(): void {
  document.addEventListener('click', (event) => {
    const word = event.target instanceof Element ? event.target.closest<HTMLElement>('.rows abbr') : null;
    const meanings = word?.closest('.as-row, li')?.querySelector<HTMLDetailsElement>('.meanings') ?? null;
    if (word === null || meanings === null) return;
    // Where the words are the label of a box to tick, asking is not ticking.
    event.preventDefault();
    meanings.open = true;
    for (const entry of meanings.querySelectorAll('dl > div'))
      entry.classList.toggle('asked', entry.querySelector('dd')?.textContent === word.title);
  });
}
