/** Splits a rack into screenfuls: all on one if they fit, else fewer, so that the key to the next has room. */
export function pagesOf<T>(all: readonly T[], { alone, paged }: { alone: number; paged: number }) {
  const each = all.length <= alone ? alone : paged;
  const count = Math.max(1, Math.ceil(all.length / each));
  return {
    count,
    /** The page's items; a page past the end comes round to the first. */
    at: (page: number): readonly T[] => {
      const from = (page % count) * each;
      return all.slice(from, from + each);
    },
    pageOf: (index: number): number => Math.floor(index / each),
  };
}
