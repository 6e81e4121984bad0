/** Stands in the address of a bucket that has not been written yet; `new` is no id of ours. */
export const newBucketId = "new";
