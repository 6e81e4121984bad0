import { catalogue, params } from "./catalogue.ts";

export const dewaxWayTexts = catalogue("dewax/dewaxWay", {
  flash: "flash fire",
  steam: "steam",
  "hot-water": "hot water",
  staged: "staged in the kiln",
});

export const insideTexts = catalogue("dewax/inside", {
  clean: "clean inside",
  residue: "residue inside",
});

export const dewaxTexts = catalogue("dewax", {
  "dewaxEntry.dewaxed": params("Dewaxed: {part}"),
  "dewaxEntry.dewaxed.waxWeighedBack": "wax weighed back",
  "dewaxEntry.shell-rinsed": "Shell rinsed with water",
  "dewaxEntry.shell-inspected": params("Looked inside: {inside}"),
});
