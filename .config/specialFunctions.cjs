const { readFileSync } = require("node:fs");
const path = require("node:path");

/**
 * Of jStat only the special functions are in use, and the library comes in one piece that no bundler can thin out. This
 * loader takes the one source file of it that is needed; without it every cell function would wait for six times as much.
 */
module.exports = function specialFunctions() {
  const file = path.join(path.dirname(this.resourcePath), "..", "src", "special.js");
  this.addDependency(file);
  return `const jStat = { fn: {} };\n${readFileSync(file, "utf8")}\nexport default jStat;\n`;
};
