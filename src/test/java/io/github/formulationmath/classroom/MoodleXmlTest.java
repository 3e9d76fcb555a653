package io.github.formulationmath.classroom;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.reckoning.Style;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xml.sax.InputSource;

/** Reads the question bank back with the XML parser of the JDK and holds it against the exercises. */
class MoodleXmlTest {

    private static final ClassSet SET =
            ClassSet.named("Creams & <balms>/soaps", List.of(Topic.values()), List.of("Robin", "Kim", ""), 4);

    private static Element parsed(String xml) throws Exception {
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new InputSource(new StringReader(xml)))
                .getDocumentElement();
    }

    private static List<Element> children(Element parent, String name) {
        List<Element> found = new ArrayList<>();
        for (Node each = parent.getFirstChild(); each != null; each = each.getNextSibling()) {
            if (each instanceof Element element && element.getTagName().equals(name)) {
                found.add(element);
            }
        }
        return found;
    }

    private static String text(Element parent, String name) {
        Element holder = children(parent, name).get(0);
        List<Element> texts = children(holder, "text");
        return texts.isEmpty() ? holder.getTextContent() : texts.get(0).getTextContent();
    }

    /** The words of a piece of HTML, which is well-formed too. */
    private static String words(String html) throws Exception {
        return parsed(html).getTextContent();
    }

    @Test
    void what_is_read_back_is_what_was_set() throws Exception {
        Element quiz = parsed(SET.moodleXml(Style.steps()));
        assertThat(quiz.getTagName()).isEqualTo("quiz");
        List<Element> questions = children(quiz, "question");
        assertThat(questions).hasSize(12 * (1 + 3));
        int at = 0;
        for (int topic = 0; topic < 12; topic++) {
            Element category = questions.get(at++);
            assertThat(category.getAttribute("type")).isEqualTo("category");
            assertThat(text(category, "category"))
                    .startsWith("$course$/top/Creams & <balms>//soaps/")
                    .endsWith(Topic.values()[topic].title(Style.steps().wording()));
            for (int learner = 1; learner <= 3; learner++) {
                compare(questions.get(at++), SET.exercises(learner).get(topic), learner);
            }
        }
    }

    private static void compare(Element question, Exercise exercise, int learner) throws Exception {
        assertThat(question.getAttribute("type")).isEqualTo("multichoice");
        assertThat(text(question, "name")).endsWith("sheet " + learner);
        assertThat(text(question, "questiontext")).isEqualTo(exercise.question(Style.steps()));
        assertThat(words(text(question, "generalfeedback"))).contains("answer, to the digits asked for");
        assertThat(text(question, "defaultgrade"))
                .isEqualTo(String.valueOf(exercise.topic().points()));
        assertThat(text(question, "single")).isEqualTo("true");
        List<Element> answers = children(question, "answer");
        assertThat(answers).hasSize(4);
        for (int i = 0; i < 4; i++) {
            String letter = String.valueOf((char) ('a' + i));
            Element answer = answers.get(i);
            assertThat(text(answer, "text"))
                    .isEqualTo(exercise.choices(Style.steps()).get(i));
            assertThat(answer.getAttribute("fraction")).isEqualTo(letter.equals(exercise.rightLetter()) ? "100" : "0");
            assertThat(text(answer, "feedback")).isEqualTo(exercise.explanation(letter, Style.steps()));
        }
    }
}
