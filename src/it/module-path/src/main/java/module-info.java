/** A module that uses the library. */
module bench {
    requires io.github.formulationmath;
    requires java.measure;
}
