import { createElement } from "react";
import { createRoot } from "react-dom/client";

/** The least a React page can do: one paragraph. */
const root = document.getElementById("root");
if (root !== null) createRoot(root).render(createElement("p", null, "Nothing on the rack."));
