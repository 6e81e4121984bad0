/** Makes every summary again from the log, and says how it went. */
export declare function RemakeKey(): import("react").JSX.Element;
