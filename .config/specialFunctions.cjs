const { readFileSync } = require("node:fs");
const path = require("node:path");

/** What src/core/basis/statistics.ts asks of the library. */
const ASKED_FOR = "ibetainv";

/** A function of the library, from its name to the brace that stands alone at the end. */
const FUNCTION = /^jStat\.(\w+) = (function \1\([\s\S]*?^\});/gm;

/**
 * Of jStat one function is in use, and the library comes in one piece that no bundler can thin out. This loader takes that
 * function and those it calls from the library's own source file, as plain functions.
 */
module.exports = function specialFunctions() {
  const file = path.join(path.dirname(this.resourcePath), "..", "src", "special.js");
  this.addDependency(file);
  const all = new Map([...readFileSync(file, "utf8").matchAll(FUNCTION)].map(([, name, text]) => [name, text]));

  const needed = new Map();
  const need = (name) => {
    if (needed.has(name)) return;
    const text = all.get(name);
    if (!text) throw new Error(`${file} has no function ${name} that can be taken by itself.`);
    needed.set(name, text.replaceAll("jStat.", ""));
    for (const [, called] of text.matchAll(/\bjStat\.(\w+)/g)) need(called);
  };
  need(ASKED_FOR);
  return `${[...needed.values()].join("\n")}\nexport default { ${ASKED_FOR} };\n`;
};
