import { describe, expect, test } from "vitest";
import { isSkipWaiting, noticePath, openRequest } from "./swMessages.ts";

describe("a pressed notification", () => {
  test("leads to the piece it speaks of", () => {
    expect(noticePath({ path: "/piece/abc" })).toBe("/piece/abc");
  });

  test.each([
    undefined,
    null,
    3,
    {},
    { path: 7 },
    { path: "piece" },
    { path: "//else.where/x" },
    { path: "/\\else" },
  ])("leads to the start when it carries %o", (data) => expect(noticePath(data)).toBe("/"));

  test("asks an open page for its path, and nothing else is taken for that", () => {
    expect(openRequest({ type: "open", path: "/due" })).toEqual({ type: "open", path: "/due" });
    expect(openRequest({ type: "open", path: "https://else.where" })).toBeNull();
    expect(openRequest({ type: "CACHE_UPDATED", path: "/due" })).toBeNull();
    expect(openRequest("open")).toBeNull();
  });
});

test("only the one message makes a waiting version take over", () => {
  expect(isSkipWaiting({ type: "SKIP_WAITING" })).toBe(true);
  expect(isSkipWaiting({ type: "skip" })).toBe(false);
  expect(isSkipWaiting(null)).toBe(false);
});
