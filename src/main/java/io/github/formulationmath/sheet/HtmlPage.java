package io.github.formulationmath.sheet;

import io.github.formulationmath.working.DisplayText;
import java.util.List;

/** A page as HTML that needs no other file: real headings and table heads, dark text on white, and a style for print. */
final class HtmlPage extends PageWriter {

    private static final String STYLE = """
            body{font:1rem/1.45 system-ui,sans-serif;max-width:60rem;margin:1.5rem auto;padding:0 1rem;color:#1a1a1a;\
            background:#fff}
            h1{font-size:1.5rem}h2{font-size:1.15rem;margin:1.6rem 0 .4rem}
            dl{display:grid;grid-template-columns:max-content 1fr;gap:.2rem 1rem;margin:1rem 0}dt{font-weight:600}dd{margin:0}
            .scroll{overflow-x:auto}
            table{border-collapse:collapse;width:100%}
            th,td{border-bottom:1px solid #767676;padding:.3rem .6rem;text-align:left;vertical-align:top}
            th{border-bottom:2px solid #1a1a1a}
            .number{text-align:right;font-variant-numeric:tabular-nums;white-space:nowrap}
            .caution{border-left:.4rem solid #1a1a1a;padding:.4rem .8rem;margin:1rem 0;font-weight:600}
            @media print{body{margin:0;max-width:none;font-size:10pt}tr,.caution{break-inside:avoid}\
            h2{break-after:avoid}}
            """;

    private HtmlPage() {}

    static String write(Page page) {
        HtmlPage html = new HtmlPage();
        String title = escape(page.title());
        html.line("<!DOCTYPE html>");
        html.line("<html lang=\"" + escape(page.language()) + "\">");
        html.line("<head>");
        html.line("<meta charset=\"utf-8\">");
        html.line("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">");
        html.line("<title>" + title + "</title>");
        html.line("<style>\n" + STYLE + "</style>");
        html.line("</head>");
        html.line("<body>");
        html.line("<main>");
        html.line("<h1>" + title + "</h1>");
        page.blocks().forEach(html::block);
        html.line("</main>");
        html.line("</body>");
        html.line("</html>");
        return html.text();
    }

    @Override
    void facts(Page.Facts facts) {
        line("<dl>");
        facts.facts().forEach(f -> line("<dt>" + escape(f.name()) + "</dt><dd>" + escape(f.value()) + "</dd>"));
        line("</dl>");
    }

    @Override
    void remark(String text) {
        line("<p>" + escape(text) + "</p>");
    }

    @Override
    void caution(String text) {
        line("<p class=\"caution\">" + escape(text) + "</p>");
    }

    @Override
    void table(Page.Table table) {
        if (!table.heading().isEmpty()) {
            line("<h2>" + escape(table.heading()) + "</h2>");
        }
        String label = table.heading().isEmpty() ? "table" : escape(table.heading());
        line("<div class=\"scroll\" role=\"region\" tabindex=\"0\" aria-label=\"" + label + "\">");
        line("<table>");
        line("<thead>" + row("th scope=\"col\"", "th", table.columns(), table.numeric()) + "</thead>");
        line("<tbody>");
        table.rows().forEach(cells -> line(row("td", "td", cells, table.numeric())));
        line("</tbody>");
        line("</table>");
        line("</div>");
    }

    private static String row(String open, String close, List<String> cells, List<Boolean> numeric) {
        StringBuilder row = new StringBuilder("<tr>");
        for (int i = 0; i < cells.size(); i++) {
            row.append('<')
                    .append(open)
                    .append(numeric.get(i) ? " class=\"number\">" : ">")
                    .append(escape(cells.get(i)))
                    .append("</")
                    .append(close)
                    .append('>');
        }
        return row.append("</tr>").toString();
    }

    private static String escape(String text) {
        return DisplayText.html(text);
    }
}
