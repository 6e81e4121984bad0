import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { allRows } from "../../tests/numbers/allRows.ts";
import {
  callsAbout,
  changed,
  extremes,
  faultOf,
  figuresOf,
  isRefused,
} from "../../tests/numbers/numberRow.ts";

const modules = import.meta.glob<Readonly<Record<string, unknown>>>(["./**/*.ts", "!./**/*.test.ts"], {
  eager: true,
});
const exported = Object.entries(modules).flatMap(([path, exports]) =>
  Object.entries(exports)
    .filter(([, value]) => typeof value === "function")
    .map(([name]) => `${path.replace(/^.*\/|\.ts$/g, "")}.${name}`),
);
const rows = Object.entries(allRows).flatMap(([module, functions]) =>
  Object.entries(functions).map(([name, row]) => ({ name: `${module}.${name}`, row })),
);

/** One figure of a call put to one value. */
const put = (args: readonly unknown[], place: string, figure: number): readonly unknown[] =>
  changed(args, new Map([[place, () => figure]])) as readonly unknown[];

test("every function of the sums has its row here, and no row is left over", () => {
  expect(rows.map(({ name }) => name).toSorted()).toEqual(exported.toSorted());
});

describe("numbers in are checked", () => {
  test.each(rows)("$name answers the call that makes sense", ({ row }) => {
    expect(row.call(row.args)).not.toBeInstanceOf(Error);
    expect(faultOf(row, row.args)).toBeNull();
  });

  test.each(rows)("$name: each figure in turn at every extreme", ({ row }) => {
    const faults = figuresOf(row.args).flatMap((place) =>
      extremes.flatMap((figure) => {
        const fault = faultOf(row, put(row.args, place, figure));
        return fault === null ? [] : [`${place} = ${figure}: ${fault}`];
      }),
    );
    expect(faults).toEqual([]);
  });

  test.each(rows)("$name takes no figure that is not a number", ({ row }) => {
    const taken = figuresOf(row.args)
      .filter((place) => !row.unread.some((idle) => place === idle || place.startsWith(`${idle}.`)))
      .filter((place) => !isRefused(row, put(row.args, place, NaN)));
    expect(taken).toEqual([]);
  });

  test.each(rows)("$name: human sizes, extremes, empty and turned lists together", ({ row }) => {
    fc.assert(
      fc.property(callsAbout(row), (args) => faultOf(row, args) === null),
      { numRuns: 60, seed: 20_261 },
    );
  });
});
