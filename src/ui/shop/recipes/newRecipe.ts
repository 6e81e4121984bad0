/** Stands in the address of a recipe that has not been written yet; `new` is no id of ours. */
export const newRecipeId = "new";
