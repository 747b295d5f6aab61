import office from "eslint-plugin-office-addins";
import globals from "globals";
import tseslint from "typescript-eslint";

/** The vendor's rules for Office.js, without its second copy of the TypeScript plugin. */
const { plugins, rules } = office.configs.recommended.at(-1);
const officeRules = {
  plugins: { "office-addins": plugins["office-addins"] },
  rules: Object.fromEntries(Object.entries(rules).filter(([name]) => name.startsWith("office-addins/"))),
};

const top = new URL("..", import.meta.url).pathname;

export default tseslint.config(
  { ignores: ["dist/**", "node_modules/**"] },
  ...tseslint.configs.recommendedTypeChecked,
  officeRules,
  {
    languageOptions: {
      parserOptions: { projectService: true, tsconfigRootDir: top },
      globals: { ...globals.browser, Office: "readonly", Excel: "readonly", CustomFunctions: "readonly" },
    },
    rules: {
      "@typescript-eslint/no-explicit-any": "error",
      // The spreadsheet's own error class does not descend from Error in the vendor's types.
      "@typescript-eslint/only-throw-error": ["error", { allow: ["Error"], allowThrowingUnknown: true }],
      "@typescript-eslint/switch-exhaustiveness-check": "error",
      "@typescript-eslint/prefer-nullish-coalescing": "error",
      "@typescript-eslint/consistent-type-imports": "error",
      eqeqeq: ["error", "always", { null: "ignore" }],
      "no-undef": "off",
    },
  },
  {
    // The metadata generator reads plain types only, so a shell's arguments are `any` there and nowhere else.
    files: ["src/functions/*.ts", "src/functions/shell/readings.ts"],
    rules: {
      "@typescript-eslint/no-explicit-any": "off",
      "@typescript-eslint/no-unsafe-assignment": "off",
      "@typescript-eslint/no-unsafe-argument": "off",
      "@typescript-eslint/no-unsafe-return": "off",
    },
  },
  {
    files: ["**/*.js", "**/*.mjs"],
    extends: [tseslint.configs.disableTypeChecked],
    languageOptions: { globals: globals.node },
  },
);
