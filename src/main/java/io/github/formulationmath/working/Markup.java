package io.github.formulationmath.working;

/** The formats a working is printed in. */
enum Markup {
    TEXT {
        @Override
        Page page(Words words) {
            return new TextPage();
        }
    };

    abstract Page page(Words words);
}
