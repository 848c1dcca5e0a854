import { availableParallelism } from "node:os";
import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";

const root = fileURLToPath(new URL("..", import.meta.url));

export default defineConfig({
  root,
  test: {
    reporters: ["default", "./tools/closing-line.ts"],
    testTimeout: 60_000,
    hookTimeout: 120_000,
    // The runner leaves one core free; on a machine of two that would be one worker and half the speed.
    maxWorkers: Math.max(2, availableParallelism() - 1),
    projects: [
      {
        extends: true,
        test: {
          name: "node",
          environment: "node",
          include: ["tests/**/*.test.ts"],
          exclude: ["tests/page/**"],
          setupFiles: ["tests/setup-functions.ts"],
        },
      },
      {
        extends: true,
        test: { name: "pane", environment: "happy-dom", include: ["tests/pane/**/*.test.tsx"], setupFiles: ["tests/setup-dom.ts"] },
      },
      { extends: true, test: { name: "page", environment: "node", include: ["tests/page/**/*.test.ts"], fileParallelism: false } },
    ],
  },
});
