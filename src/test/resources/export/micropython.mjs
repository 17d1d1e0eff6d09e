// Runs an exported module in MicroPython's port for JavaScript: node run.mjs FOLDER_OF_NODE_MODULES MODULE.py [LOG.csv]
// Its garbage is collected only between calls from outside, so the log goes in by portions.
import { readFileSync, writeSync } from "node:fs";
import { pathToFileURL } from "node:url";
const [modules, module, log] = process.argv.slice(2);
const port = "/node_modules/@micropython/micropython-webassembly-pyscript/micropython.mjs";
const { loadMicroPython } = await import(pathToFileURL(modules + port).href);
const python = await loadMicroPython({ heapsize: 32 * 1024 * 1024, linebuffer: false, stdout: (data) => writeSync(1, data) });
python.FS.writeFile("/faintwind.py", readFileSync(module));
python.runPython("import sys\nsys.path.append('/')\nimport faintwind\nlog = faintwind.Log()\ndef show(text):\n    if text is not None:\n        print(text)");
if (log) {
  const lines = readFileSync(log, "utf8").split(/\r?\n/).filter((line) => line);
  for (let i = 0; i < lines.length; i += 20) {
    const portion = lines.slice(i, i + 20).map((line) => "show(log.line(" + JSON.stringify(line) + "))");
    python.runPython(portion.join("\n"));
  }
} else {
  python.runPython("print(sys.implementation.name, '%.5f' % (100 * faintwind.check()))");
}
