import office from "eslint-plugin-office-addins";
import globals from "globals";
import tseslint from "typescript-eslint";

const top = new URL("..", import.meta.url).pathname;

export default tseslint.config(
  { ignores: ["dist/**", "node_modules/**"] },
  ...tseslint.configs.recommendedTypeChecked,
  ...office.configs.recommended,
  {
    languageOptions: {
      parserOptions: { projectService: true, tsconfigRootDir: top },
      globals: { ...globals.browser, Office: "readonly", Excel: "readonly", CustomFunctions: "readonly" },
    },
    rules: {
      "@typescript-eslint/no-explicit-any": "error",
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
  { files: ["**/*.js", "**/*.mjs"], extends: [tseslint.configs.disableTypeChecked], languageOptions: { globals: globals.node } },
);
