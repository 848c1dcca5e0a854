/** Builds the add-in: pane, worksheet functions with their metadata, manifest, icons. */
const path = require("node:path");
const CopyPlugin = require("copy-webpack-plugin");
const HtmlPlugin = require("html-webpack-plugin");
const CustomFunctionsMetadataPlugin = require("custom-functions-metadata-plugin");

const root = path.resolve(__dirname, "..");
/** Addresses in manifest.xml; replaced by the one build setting, `npm run build -- --at https://example.org/gear`. */
const DEV_ADDRESS = "https://localhost:3000/addin";
const DEV_ORIGIN = "https://localhost:3000";

const stamp = (text, at) => (at ? text.replaceAll(DEV_ADDRESS, at.replace(/\/$/, "")).replaceAll(DEV_ORIGIN, new URL(at).origin) : text);

module.exports = Object.assign(
  (env, argv) => ({
    context: root,
    target: ["web", "es2020"],
    devtool: argv.mode === "production" ? false : "source-map",
    // functions.js stands alone: it also runs where there is no page. The pane takes the engine from it.
    entry: {
      functions: "./src/functions/functions.ts",
      taskpane: { import: "./src/taskpane/index.tsx", dependOn: "functions" },
    },
    output: {
      clean: true,
      path: path.join(root, "dist"),
      filename: "[name].js",
      chunkFilename: "[name].js",
      // A runtime for functions alone has no page, so neither its window nor its address may be asked for.
      globalObject: "globalThis",
      publicPath: "",
    },
    resolve: { extensions: [".ts", ".tsx", ".js"] },
    module: {
      rules: [
        {
          test: /\.tsx?$/,
          exclude: /node_modules/,
          loader: "esbuild-loader",
          options: { target: "es2020", jsx: "automatic", tsconfig: path.join(root, "tsconfig.json") },
        },
      ],
    },
    performance: { hints: false },
    // What the pane fetches after its first load are dynamic imports.
    optimization: { splitChunks: false, runtimeChunk: false },
    cache: { type: "filesystem", cacheDirectory: path.join(root, "build", "webpack-cache"), buildDependencies: { config: [__filename] } },
    plugins: [
      new CustomFunctionsMetadataPlugin({ output: "functions.json", input: "./src/functions/functions.ts" }),
      new HtmlPlugin({ template: "./src/taskpane/taskpane.html", filename: "taskpane.html", chunks: ["functions", "taskpane"] }),
      new CopyPlugin({
        patterns: [
          { from: "src/taskpane/assets", to: "assets" },
          { from: "manifest.xml", to: "manifest.xml", transform: (text) => stamp(text.toString(), env.at) },
        ],
      }),
    ],
  }),
  { stamp },
);
