/**
 * The version of the sums that say how dry a coat is. Raised with every change that moves what they say; what was said
 * by an older one stays as it was said.
 */
export const dryingSumsVersion = 1;
