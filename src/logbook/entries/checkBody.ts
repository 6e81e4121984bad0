import { bucketChecks } from "./checkBucketBody.ts";
import { fireChecks } from "./checkFireBody.ts";
import { pieceChecks } from "./checkPieceBody.ts";
import { shopChecks } from "./checkShopBody.ts";
import type { Check, Fault } from "./bodyFaults.ts";
import { fine } from "./bodyFaults.ts";
import type { EntryBodies, EntryType } from "./entry.ts";

/** What is wrong with a body by itself, whatever came before: a blank name, a number out of range. */
export function bodyFault<T extends EntryType>(type: T, body: EntryBodies[T]): Fault {
  const check: Check<T> = checks[type];
  return check(body);
}

const checks: { readonly [T in EntryType]: Check<T> } = {
  ...pieceChecks,
  ...bucketChecks,
  ...shopChecks,
  ...fireChecks,
  "entry-struck": fine,
};
