/** A trace outside the database that a real shop was kept here: if the browser clears the book, it can be told plainly. */

const name = 'standbook-begun';
/** Seconds; browsers keep a cookie for at most 400 days, and each start writes it anew. */
const longest = 34_560_000;

interface Begun {
  /** The ISO date of the last start with a real shop; undefined when there was none, or its trace was cleared too. */
  last(): string | undefined;
  note(day: string): void;
  forget(): void;
}

/** A cookie: clearing for want of room takes databases and caches, and leaves cookies. */
export function createBegun(page: { cookie: string } = document): Begun {
  const write = (value: string, seconds: number) => {
    page.cookie = `${name}=${value}; max-age=${seconds}; path=/; samesite=strict`;
  };
  return {
    last: () => new RegExp(`(?:^|; )${name}=(\\d{4}-\\d{2}-\\d{2})`).exec(page.cookie)?.[1],
    note: (day) => write(day, longest),
    forget: () => write('', 0),
  };
}
