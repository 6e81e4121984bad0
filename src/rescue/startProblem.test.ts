import { expect, test } from "vitest";
import { NewerStoreError, offersFor, problemOf } from "./startProblem.ts";

const named = (name: string, more: object = {}) => Object.assign(new Error("as it says"), { name, ...more });

test.each([
  ["MissingAPIError", "no-store"],
  ["SecurityError", "store-refused"],
  ["InvalidStateError", "store-refused"],
  ["UnknownError", "store-failed"],
])("%s while the store opens is said as %s", (name, kind) => {
  expect(problemOf(named(name), "store").kind).toBe(kind);
});

test("the browser's own error counts, not the library's wrapping of it", () => {
  expect(problemOf(named("OpenFailedError", { inner: named("SecurityError") }), "store").kind).toBe(
    "store-refused",
  );
});

test("the same unknown error is the program's once the store is open", () => {
  expect(problemOf(named("TypeError"), "app")).toEqual({ kind: "app-failed", detail: "as it says" });
});

test("a newer store says both versions and offers an update first", () => {
  const problem = problemOf(new NewerStoreError({ found: 30, known: 2 }), "store");
  expect(problem).toEqual({ kind: "newer-store", found: 30, known: 2 });
  expect(offersFor(problem)[0]).toBe("look-for-update");
});

test("while the log is made ready there is nothing to press", () => {
  expect(offersFor({ kind: "upgrading", done: 1, of: 3 })).toEqual([]);
});

test("something thrown that is no error is still said", () => {
  expect(problemOf("gone", "app")).toEqual({ kind: "app-failed", detail: "gone" });
});
