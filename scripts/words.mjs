import { readFileSync, writeFileSync } from "node:fs";
import { spawnSync } from "node:child_process";
import { must, setUp } from "./setUp.mjs";

/*
 * One page of all words, `.words/words.md`: the catalogue by key, then each text of every screen of a demo and of an
 * overfull shop with the screens it stands on. Both are read by the journey that holds them to the words of the trade.
 */
const folder = ".words";

setUp();
if (!process.argv.includes("--built")) must("npx", ["vite", "build", "--logLevel", "warn"]);
// The page is made also where a text is at fault: it is there to be read.
spawnSync("npx", ["playwright", "test", "tests/journeys/words.e2e.ts"], {
  stdio: "inherit",
  env: { ...process.env, DIPBOOK_WORDS: folder },
});

const read = (name) => JSON.parse(readFileSync(`${folder}/${name}.json`, "utf8"));
const lines = ["# The catalogue", ""];
let last = "";
for (const { file, part, key, text } of read("catalogue")) {
  if (last !== `${file} ${part}`) lines.push("", `## ${part} (${file})`, "");
  last = `${file} ${part}`;
  lines.push(`- \`${key}\` ${text}`);
}

const screensOfText = new Map();
for (const shop of ["typical", "overfull"])
  for (const { screen, blocks } of read(shop))
    for (const { text } of blocks) {
      const screens = screensOfText.get(text) ?? new Set();
      screensOfText.set(text, screens.add(shop === "typical" ? screen : `${screen} (overfull)`));
    }
lines.push("", "# The screens", "", "◦ stands for what the maker wrote.");
let screenNow = "";
for (const [text, screens] of screensOfText) {
  const [first, ...others] = screens;
  if (first !== screenNow) lines.push("", `## ${first}`, "");
  screenNow = first;
  const more =
    others.length === 0
      ? ""
      : ` *(also ${others.slice(0, 4).join(", ")}${others.length > 4 ? ` and ${others.length - 4} more` : ""})*`;
  lines.push(`- ${text}${more}`);
}
writeFileSync(`${folder}/words.md`, `${lines.join("\n")}\n`);
console.log(`${folder}/words.md: ${screensOfText.size} texts on screens`);
