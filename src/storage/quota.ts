/** Whether a failed write failed for want of room. The error comes bare, wrapped as `inner`, or in a bulk's list. */
export function isOutOfSpace(error: unknown, depth = 0): boolean {
  if (typeof error !== "object" || error === null || depth > 4) return false;
  if ("name" in error && error.name === "QuotaExceededError") return true;
  if ("inner" in error && isOutOfSpace(error.inner, depth + 1)) return true;
  return (
    "failures" in error &&
    Array.isArray(error.failures) &&
    error.failures.some((f) => isOutOfSpace(f, depth + 1))
  );
}
