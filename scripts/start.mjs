import { must, setUp } from "./setUp.mjs";

setUp();
must("npx", ["vite", "build", "--logLevel", "warn"]);
console.log(
  "\nDipbook is built. Open the address below; an empty rack offers the demo shop. Stop with Ctrl+C.\n",
);
must("npx", ["vite", "preview", "--port", process.env.PORT ?? "4173"]);
