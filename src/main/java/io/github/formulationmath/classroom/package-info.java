/**
 * Worksheets for a class: exercises drawn for each learner, with keys and a file for teaching platforms.
 *
 * <pre>
 *   Topic ── draws numbers ── Draft                question, answer of the library, mistakes of the topic
 *      |
 *   Choices                                        which three mistakes stand beside the right answer
 *      |
 *   Exercise ── ClassSet ── ClassPages             sheets, page by page, with room to write
 *                      ├── ClassKeys               keys with explanations, class list
 *                      └── MoodleXml               the same for a teaching platform
 * </pre>
 *
 * <p><b>What comes in:</b> topics, learners and a seed. <b>What goes out:</b> documents, to be printed in any format, and a
 * question bank. Worksheets on a working of one's own are made in the room {@code exercise}.
 *
 * <p><b>Reading order:</b> {@link io.github.formulationmath.classroom.ClassSet}, {@link
 * io.github.formulationmath.classroom.Exercise}, {@link io.github.formulationmath.classroom.Topic}, {@code RecipeTopics}, {@code
 * BalanceTopics}, {@code MaterialTopics}, {@code Choices}, {@code Draw}.
 *
 * <p><b>Why it is right:</b> every answer is worked out by the room that the topic belongs to and explained by its working; a
 * test works all of them out again in fractions of its own, from the words of the printed question; another plays pupils who
 * only compare sizes.
 */
@NullMarked
package io.github.formulationmath.classroom;

import org.jspecify.annotations.NullMarked;
