/** Set by the build; a page served while it is being written has none. */
const built: unknown = import.meta.env["VITE_DIPBOOK_VERSION"];
export const version: string = typeof built === "string" && built !== "" ? built : "in the making";
