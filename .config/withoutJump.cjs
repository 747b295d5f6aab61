/** The table by which the generator would leap ahead. */
const TABLE = /^const JUMP_COEFS = ".*";$/m;
/** The method that alone reads it. */
const JUMP = /^\tjump\(\) \{\n[\s\S]*?^\t\}\n/m;

/**
 * The random generator of pure-rand can leap ahead by a table of 3 kB that no bundler leaves out; nothing here leaps, and
 * what it draws is the same without.
 */
module.exports = function withoutJump(source) {
  if (!TABLE.test(source) || !JUMP.test(source))
    throw new Error("The generator no longer looks as this loader knows it.");
  return source.replace(TABLE, "").replace(JUMP, "");
};
