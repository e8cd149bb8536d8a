/** A form's fields -> what the server answers, the latest only: an answer that comes after a later question is dropped. */

export interface Answer {
  readonly status: number;
  /** Where it came from in the end. */
  readonly url: string;
  readonly text: string;
}

export async function ask(address: string, fields: URLSearchParams | null): Promise<Answer> {
  const response = await fetch(address, fields === null ? {} : { method: 'POST', body: fields });
  return { status: response.status, url: response.url, text: await response.text() };
}

/** Runs one at a time; asked again meanwhile, it runs once more at the end. */
export function latest(run: (isStale: () => boolean) => Promise<void>): () => void {
  let running = false;
  let again = false;
  const start = async (): Promise<void> => {
    if (running) {
      again = true;
      return;
    }
    running = true;
    do {
      again = false;
      await run(() => again).catch(() => undefined);
    } while (again);
    running = false;
  };
  return () => void start();
}

/** Calls when there has been quiet for so long. */
export function whenQuiet(ms: number, call: () => void): () => void {
  let timer = 0;
  return () => {
    clearTimeout(timer);
    timer = window.setTimeout(call, ms);
  };
}

export function fieldsOf(form: HTMLFormElement): URLSearchParams {
  const fields = new URLSearchParams();
  for (const [name, value] of new FormData(form)) if (typeof value === 'string') fields.append(name, value);
  return fields;
}

export function pageIn(text: string): Document {
  return new DOMParser().parseFromString(text, 'text/html');
}

/** For whoever listens to the page: said once, and not in the middle of what is being read out. */
export function say(words: string): void {
  const place = document.querySelector('#said');
  if (place !== null && place.textContent !== words) place.textContent = words;
}
