/**
 * Version of the sums that measure a pattern. Raise it whenever a change in src/geometry or in the worker's own numbers
 * (cells, columns, limits) makes a kept result differ from a new one: kept results of an older version are calculated
 * again, and entries say by which version they were measured.
 */
export const sumsVersion = 2;
