// html_style.h - how the HTML page looks: on a screen, on a telephone, on paper.
#pragma once

#include <string_view>

namespace dyestead::reports {

inline constexpr std::string_view kHtmlStyle = R"css(
:root {
  color-scheme: light dark;
  --paper: #ffffff; --text: #1f2328; --quiet: #565d66; --rule: #c9ced4; --shade: #f4f5f6;
  --caution: #8a1c1c;
}
@media screen and (prefers-color-scheme: dark) {
  :root {
    --paper: #1b1e22; --text: #e8e6e1; --quiet: #abb1b8; --rule: #4a5057; --shade: #24282d;
    --caution: #ffab91;
  }
}
* { box-sizing: border-box; }
html { -webkit-text-size-adjust: 100%; text-size-adjust: 100%; }
body {
  margin: 0; background: var(--paper); color: var(--text);
  font: 1rem/1.5 system-ui, "DejaVu Sans", sans-serif; overflow-wrap: break-word;
}
main { max-width: 50rem; margin: 0 auto; padding: 1.5rem 1rem 3rem; }
h1 { font-size: 1.6rem; line-height: 1.2; margin: 0; }
h2 { font-size: 1.2rem; line-height: 1.3; margin: 2.2rem 0 0.5rem; }
.standing { margin: 0.2rem 0 1.5rem; color: var(--quiet); }
.headline { font-size: 1.35rem; line-height: 1.35; font-weight: 600; margin: 1rem 0; max-width: 40rem; }
p { max-width: 40rem; margin: 0.6rem 0; }
.small { font-size: 0.875rem; color: var(--quiet); }
.caution {
  border: 1px solid var(--caution); border-left-width: 0.5rem; padding: 0.6rem 0.9rem; margin: 1rem 0;
}
.caution strong { display: block; color: var(--caution); }
.wide { overflow-x: auto; margin: 1.2rem 0; }
.wide:focus-visible { outline: 2px solid currentColor; outline-offset: 2px; }
table { border-collapse: collapse; font-variant-numeric: tabular-nums; }
caption { text-align: left; font-weight: 600; padding: 0 0 0.4rem; }
th, td { text-align: left; vertical-align: top; padding: 0.35rem 1.4rem 0.35rem 0; }
th:last-child, td:last-child { padding-right: 0; }
thead th { vertical-align: bottom; font-weight: 600; border-bottom: 2px solid var(--text); }
tbody th { font-weight: 400; }
tbody tr + tr > * { border-top: 1px solid var(--rule); }
tbody tr.total > * { font-weight: 700; border-top: 2px solid var(--text); }
.right { text-align: right; }
td.right { white-space: nowrap; }
figure { margin: 1.5rem 0; max-width: 44rem; }
figure .title { font-weight: 600; }
figure svg { display: block; max-width: 100%; height: auto; }
.chart-dark { display: none; }
@media screen and (prefers-color-scheme: dark) {
  .chart-light { display: none; }
  .chart-dark { display: block; }
}
figcaption { margin-top: 0.6rem; }
.by-hand + tbody > tr > * { height: 9mm; border: 1px solid var(--rule); padding: 0.2rem 0.5rem; }
.labels { display: grid; grid-template-columns: repeat(auto-fill, minmax(19rem, 1fr)); gap: 0.8rem; margin: 1.2rem 0; }
.label { border: 1px dashed var(--quiet); padding: 0.8rem; font-size: 0.875rem; }
.label strong { font-size: 1.05rem; }
.findings li { margin: 0.3rem 0; }
@media (max-width: 34rem) {
  body { font-size: 0.9375rem; }
  th, td { padding-right: 0.9rem; }
}
@page { size: A4; margin: 18mm 16mm; }
@media print {
  body { font-size: 10pt; }
  main { max-width: none; padding: 0; }
  h1, h2, caption, .title { break-after: avoid; }
  tr, figure, .caution, .headline, .label { break-inside: avoid; }
  .sheet ~ .sheet { break-before: page; }
  thead { display: table-header-group; }
  .wide { overflow: visible; }
}
)css";

}  // namespace dyestead::reports
