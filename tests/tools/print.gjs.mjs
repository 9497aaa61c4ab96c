// Run by gjs: shows HTML in WebKit as if it came from an address, and runs scripts there, one after another. Each script asks for a
// print, and this program answers the dialog with “Print to File”.
import GLib from 'gi://GLib';
import Gtk from 'gi://Gtk?version=3.0';
import WebKit from 'gi://WebKit2?version=4.1';
import { exit, programArgs } from 'system';

const [html, address, ...told] = programArgs;
/** The prints that are still to do: a file, its paper, and the script that asks for it. */
const jobs = told.map((job) => JSON.parse(job));
const PAPER = { A4: 'iso_a4', Letter: 'na_letter' };

const end = (trouble) => {
  if (trouble) console.error(trouble);
  exit(trouble ? 1 : 0);
};

Gtk.init(null);
const setUp = (operation, { pdf, format }) => {
  const settings = new Gtk.PrintSettings();
  settings.set_printer('Print to File');
  settings.set(Gtk.PRINT_SETTINGS_OUTPUT_URI, GLib.filename_to_uri(pdf, null));
  settings.set(Gtk.PRINT_SETTINGS_OUTPUT_FILE_FORMAT, 'pdf');
  operation.set_print_settings(settings);
  const paper = new Gtk.PageSetup();
  paper.set_paper_size_and_default_margins(Gtk.PaperSize.new(PAPER[format]));
  for (const side of ['top', 'bottom', 'left', 'right']) paper[`set_${side}_margin`](10, Gtk.Unit.MM);
  operation.set_page_setup(paper);
};

/**
 * Presses Print when the dialog is there and has found its printer. WebKit opens the dialog itself, because only WebKit knows which
 * frame it prints.
 */
const confirm = () => {
  const dialog = Gtk.Window.list_toplevels().find((window) => window instanceof Gtk.Dialog);
  if (!dialog?.get_widget_for_response(Gtk.ResponseType.OK).sensitive) return true;
  dialog.response(Gtk.ResponseType.OK);
  return false;
};

const view = new WebKit.WebView();
const printNext = () => {
  if (jobs.length === 0) return end();
  view.call_async_javascript_function(jobs[0].script, -1, null, null, null, null, (_, result) => {
    try {
      view.call_async_javascript_function_finish(result);
    } catch ({ message }) {
      end(message);
    }
  });
};
view.connect('print', (_, operation) => {
  setUp(operation, jobs.shift());
  operation.connect('finished', printNext);
  operation.connect('failed', (_, { message }) => end(message));
  GLib.timeout_add(GLib.PRIORITY_DEFAULT, 50, confirm);
  return false;
});
view.connect('load-changed', (_, event) => {
  if (event === WebKit.LoadEvent.FINISHED) printNext();
});
view.connect('load-failed', (_, _event, address, { message }) => end(`${address}: ${message}`));

const window = new Gtk.Window({ default_width: 1280, default_height: 900 });
window.add(view);
window.show_all();
view.load_bytes(new GLib.Bytes(GLib.file_get_contents(html)[1]), 'text/html', 'utf-8', address);
Gtk.main();
