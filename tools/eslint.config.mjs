import js from "@eslint/js";
import officeAddins from "eslint-plugin-office-addins";
import reactHooks from "eslint-plugin-react-hooks";
import { defineConfig, globalIgnores } from "eslint/config";
import { fileURLToPath } from "node:url";
import tseslint from "typescript-eslint";

const root = fileURLToPath(new URL("..", import.meta.url));

export default defineConfig([
  globalIgnores(["dist/**", "build/**"]),
  {
    basePath: root,
    files: ["src/**/*.{ts,tsx}", "tests/**/*.{ts,tsx}"],
    extends: [js.configs.recommended, tseslint.configs.strictTypeChecked, tseslint.configs.stylisticTypeChecked],
    languageOptions: { parserOptions: { projectService: true, tsconfigRootDir: root } },
    rules: {
      "@typescript-eslint/consistent-type-imports": "error",
      "@typescript-eslint/no-unnecessary-condition": ["error", { allowConstantLoopConditions: true }],
    },
  },
  { basePath: root, files: ["src/**/*.tsx"], extends: [reactHooks.configs.flat.recommended] },
  {
    basePath: root,
    files: ["src/excel/**/*.ts", "src/taskpane/**/*.{ts,tsx}", "src/functions/**/*.ts"],
    plugins: { "office-addins": officeAddins },
    rules: Object.fromEntries(
      [
        "call-sync-after-load",
        "call-sync-before-read",
        "load-object-before-read",
        "no-context-sync-in-loop",
        "no-empty-load",
        "no-navigational-load",
        "no-office-initialize",
      ].map((rule) => [`office-addins/${rule}`, "error"]),
    ),
  },
  {
    // Readings arrive as whatever the cell holds; the engine reads them.
    basePath: root,
    files: ["src/functions/functions.ts"],
    rules: Object.fromEntries(
      ["no-explicit-any", "no-unsafe-argument", "no-unsafe-assignment"].map((rule) => [`@typescript-eslint/${rule}`, "off"]),
    ),
  },
  {
    basePath: root,
    files: ["src/engine/**/*.ts"],
    rules: {
      "no-restricted-globals": [
        "error",
        "Office",
        "Excel",
        "CustomFunctions",
        "OfficeRuntime",
        "window",
        "document",
        "localStorage",
        "fetch",
        "navigator",
      ],
      "no-restricted-imports": [
        "error",
        { patterns: ["**/taskpane/**", "**/functions/**", "**/excel/**", "**/trial/**", "react", "react-dom", "@fluentui/*"] },
      ],
      "no-restricted-syntax": [
        "error",
        { selector: "NewExpression[callee.name='Date']", message: "The engine takes days as arguments." },
        { selector: "MemberExpression[object.name='Date'][property.name='now']", message: "The engine takes days as arguments." },
      ],
    },
  },
  {
    basePath: root,
    files: ["src/engine/gear/**/*.ts"],
    rules: {
      "no-restricted-syntax": [
        "error",
        { selector: "BinaryExpression[operator=/^[<>]=?$/]", message: "Only check/compare.ts meets a reading with a limit." },
      ],
    },
  },
  {
    basePath: root,
    files: ["tests/**/*.{ts,tsx}"],
    rules: Object.fromEntries(
      [
        "no-non-null-assertion",
        "no-unsafe-assignment",
        "no-unsafe-member-access",
        "no-unsafe-call",
        "no-unsafe-argument",
        "no-unsafe-return",
        "restrict-template-expressions",
        "no-confusing-void-expression",
        "require-await",
        "unbound-method",
      ].map((rule) => [`@typescript-eslint/${rule}`, "off"]),
    ),
  },
]);
