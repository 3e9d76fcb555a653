import io.github.formulationmath.number.Ratio

fun main() {
    val text: String? = System.getenv("NO_SUCH_VARIABLE")
    println(Ratio.parse(text))
}
