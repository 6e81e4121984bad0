import type { ImportProblem } from "../../storage/backupFile.ts";
import type { Format } from "../format/units.ts";

/** What is wrong with a backup file: what was found, what was expected, what to do. */
export function importWords(problem: ImportProblem, format: Format): string {
  const megabytes = (bytes: number) => `${format.number(bytes / 1e6, 0)} MB`;
  switch (problem.code) {
    case "too-large":
      return `The file has ${megabytes(problem.bytes)}, expected ${megabytes(problem.maxBytes)} at most. It can't be read here.`;
    case "not-json":
      return "This is not a backup, or it is cut off. Choose the file as it was saved, not opened and saved again.";
    case "not-a-backup":
      return `Found ${problem.found}, expected ${problem.expected}. Choose a backup saved by Dipbook.`;
    case "newer-backup":
      return `The backup is of version ${problem.version}, this Dipbook reads up to ${problem.known}. Update Dipbook first.`;
    case "bad-entry":
      return `Entry ${problem.entry}: found ${problem.found}${inField(problem.field)}, expected ${problem.expected}.`;
    case "newer-entry":
      return `Entry ${problem.entry}: found ${problem.found}, expected ${problem.expected}. Update Dipbook first.`;
    case "id-clash":
      return `Entry ${problem.entry} has the same id as another that says something else (${problem.id}). One of the two logs was altered.`;
    case "bad-photo":
      return `Photo ${problem.photo}: found ${problem.found}, expected ${problem.expected}.`;
    case "photo-clash":
      return `Photo ${problem.photo} has the same id as another picture (${problem.id}).`;
    case "out-of-space":
      return "This device has no room left for it. Free some space and try again.";
  }
}

const inField = (field: string): string => (field === "" ? "" : ` in ${field}`);
